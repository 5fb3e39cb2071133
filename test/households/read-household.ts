import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import interview from '#compiled/questions.js';
import { makePlan } from '../../src/plan/make-plan';
import type { Plan } from '../../src/plan/plan';
import { readHome } from '../../src/store/read-home';

/** The folder with the demo homes: our own invention, examples and not outside checks. */
export const folder = import.meta.dirname;

/** The plan of a demo home; throws with every fault when its file is not sound. */
export function planOf(
  name: string,
  changed: Record<string, string | number | string[]> = {},
): Plan {
  const path = join(folder, `${name}.home.yaml`);
  const read = readHome(path, interview);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return makePlan(interview, { ...read.answers, ...changed }, read.asOf!);
}

export function textOf(path: string): string {
  return readFileSync(path, 'utf8');
}
