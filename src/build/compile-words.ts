import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseDocument } from 'yaml';
import { prettifyError, z } from 'zod';

const ruleSentences = z.record(
  z.string(),
  z.strictObject({
    says: z.string().min(10),
    saysIfOpen: z.string().min(10).optional(),
    proof: z.string().min(5).optional(),
  }),
);

/** Check what the rules say in each language under `from` against the table of rules, and write a module a language. */
export function compileWords(from: string, rulesTable: string, to: string): void {
  const ids = parse(rulesTable).rows.map((row: { id: string }) => row.id) as string[];
  for (const folder of readdirSync(from, { withFileTypes: true }).filter((e) => e.isDirectory())) {
    const path = join(from, folder.name, 'rules.yaml');
    if (!existsSync(path)) throw new Error(`${path} is missing: write what each rule says`);
    const read = ruleSentences.safeParse(parse(path));
    if (!read.success) throw new Error(`${path}: ${prettifyError(read.error)}`);
    const missing = ids.filter((id) => !(id in read.data));
    if (missing.length > 0) throw new Error(`${path} has no words for ${missing.join(', ')}`);
    const strange = Object.keys(read.data).filter((id) => !ids.includes(id));
    if (strange.length > 0)
      throw new Error(
        `${path} has words for ${strange.join(', ')}, which is no rule: add its row to ${rulesTable}, or take them away`,
      );
    mkdirSync(join(to, folder.name), { recursive: true });
    const text = JSON.stringify(Object.fromEntries(ids.map((id) => [id, read.data[id]])));
    writeFileSync(
      join(to, folder.name, 'rules.js'),
      `export default JSON.parse(${JSON.stringify(text)});\n`,
    );
    writeFileSync(
      join(to, folder.name, 'rules.d.ts'),
      "import type { RulesSay } from '../../../../src/words/rule-sentences';\ndeclare const rules: RulesSay;\nexport default rules;\n",
    );
  }
}

function parse(path: string) {
  const doc = parseDocument(readFileSync(path, 'utf8'), { uniqueKeys: true });
  if (doc.errors.length > 0) throw new Error(`${path}: ${doc.errors[0]!.message}`);
  return doc.toJS();
}
