import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { parseDocument } from 'yaml';
import { prettifyError } from 'zod';
import { asLines, type Row } from '../tables/lines-table';
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

/** Long tables of which a plan takes few rows: read a row at a time. */
const linesTables: readonly string[] = ['climate-stations', 'climate-diffuse', 'climate-spread'];

/** Check every table in `from` and its rooms and write it to `to` as a module the program can import, by its name alone. */
export function compileTables(from: string, to: string): void {
  mkdirSync(to, { recursive: true });
  const files = readdirSync(from, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.yaml'))
    .sort();
  const known = new Map<string, string>();
  for (const file of files) {
    const path = join(from, file);
    const name = basename(file, '.yaml');
    if (known.has(name))
      throw new Error(`${path}: ${known.get(name)} has that name too. Give one of them another.`);
    known.set(name, file);
    const doc = parseDocument(readFileSync(path, 'utf8'), { uniqueKeys: true });
    if (doc.errors.length > 0) throw new Error(`${path}: ${doc.errors[0]!.message}`);
    const read = tableFileSchema.safeParse(doc.toJS());
    if (!read.success) throw new Error(`${path}: ${prettifyError(read.error)}`);
    const { rowsFrom, rows, ...about } = read.data;
    const all = rows ?? readCsv(readFileSync(join(dirname(path), rowsFrom!), 'utf8'), rowsFrom!);
    const inLines = linesTables.includes(name);
    const text = JSON.stringify({
      name,
      ...about,
      ...(inLines ? asLines(all as Row[]) : { rows: all }),
    });
    writeFileSync(join(to, `${name}.js`), `export default JSON.parse(${JSON.stringify(text)});\n`);
    writeFileSync(
      join(to, `${name}.d.ts`),
      inLines
        ? "import type { LinesTable } from '../../../src/tables/lines-table';\ndeclare const table: LinesTable;\nexport default table;\n"
        : `import type { Table } from '../../../src/tables/table';\ndeclare const table: Table<never>;\nexport default table;\n${rowIds(all)}`,
    );
  }
}
