import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseDocument } from 'yaml';
import { prettifyError } from 'zod';
import { tableFileSchema } from '../tables/table-schema';
import { readCsv } from './read-csv';

/** The ids (or classes) of the rows as a type, where each row has one of its own: a misspelt id does not compile. */
function rowIds(rows: readonly unknown[]): string {
  const ids = rows.map((row) => {
    const named = row as { id?: unknown; class?: unknown };
    return named.id ?? named.class;
  });
  if (ids.some((id) => typeof id !== 'string') || new Set(ids).size < ids.length) return '';
  return `export type RowId = ${ids.map((id) => `'${id}'`).join(' | ')};\n`;
}

/** Check every table in `from` and write it to `to` as a module the program can import. */
export function compileTables(from: string, to: string): void {
  mkdirSync(to, { recursive: true });
  for (const file of readdirSync(from)
    .filter((f) => f.endsWith('.yaml'))
    .sort()) {
    const path = join(from, file);
    const name = file.replace(/\.yaml$/, '');
    const doc = parseDocument(readFileSync(path, 'utf8'), { uniqueKeys: true });
    if (doc.errors.length > 0) throw new Error(`${path}: ${doc.errors[0]!.message}`);
    const read = tableFileSchema.safeParse(doc.toJS());
    if (!read.success) throw new Error(`${path}: ${prettifyError(read.error)}`);
    const { rowsFrom, rows, ...about } = read.data;
    const all = rows ?? readCsv(readFileSync(join(from, rowsFrom!), 'utf8'), rowsFrom!);
    const text = JSON.stringify({ name, ...about, rows: all });
    writeFileSync(join(to, `${name}.js`), `export default JSON.parse(${JSON.stringify(text)});\n`);
    writeFileSync(
      join(to, `${name}.d.ts`),
      `import type { Table } from '../../../src/tables/table';\ndeclare const table: Table<never>;\nexport default table;\n${rowIds(all)}`,
    );
  }
}
