import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { COLUMNS_FROM, compareLines } from '../faces/compare-lines';
import { planData } from '../papers/plan-file/plan-data';
import { changesBetween } from '../plan/changes/changes-between';
import type { Plan } from '../plan/plan';
import type { Words } from '../words/words';

/** Columns where nothing says how many there are, and the least and the most that are filled. */
const COLUMNS = { usual: 80, least: 40, most: 100 };

/**
 * What a new plan says otherwise than the one in the folder, which it is to replace; empty where there is none. An older plan of
 * any form is read. Only then is anything loaded for it.
 */
export async function changedSince(
  folder: string,
  name: string,
  plan: Plan,
  words: Words,
): Promise<string[]> {
  const path = join(folder, `${name}.plan.yaml`);
  if (!existsSync(path)) return [];
  const [{ readYamlFile }, { planInFile }] = await Promise.all([
    import('../store/read-yaml-file'),
    import('../papers/plan-file/facts-in-file'),
  ]);
  const read = readYamlFile(path);
  const older = read.ok ? planInFile(read.data) : null;
  const newer = planInFile(planData(plan, words));
  if (older === null || newer === null) return [NOT_READ(path)];
  const said = words.changes(changesBetween(older.facts, newer.facts));
  const head = HEAD(path, older.asOf);
  if (said.nothing !== null) return [`${head}: ${SAME}`];
  const wide = Math.max(COLUMNS.least, process.stderr.columns ?? COLUMNS.usual);
  const width = Math.min(COLUMNS.most, wide);
  const stand = width < COLUMNS_FROM ? 'stacked' : 'columns';
  const changed = { ...said, rows: said.rows.filter((row) => row.changed) };
  return [
    `${head}:`,
    ...compareLines(changed, { width, stand, sides: { before: 'Before', after: 'Now' } }),
  ];
}

const HEAD = (path: string, asOf: string) => `Since the plan of ${asOf} in ${path}`;
const SAME = 'nothing of what is advised changed.';
const NOT_READ = (path: string) =>
  `${path} is no whole plan, so what changed since cannot be said.`;
