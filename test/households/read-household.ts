import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import interview from '#compiled/questions.js';
import type { Answers } from '../../src/interview/answers';
import { makePlan } from '../../src/plan/make-plan';
import type { Plan } from '../../src/plan/plan';
import { readHome } from '../../src/store/read-home';

/** The folder with the demo homes: our own invention, examples and not outside checks. */
export const folder = import.meta.dirname;

/** The answers of a demo home; throws with every fault when its file is not sound. */
export function answersOf(name: string): Answers {
  return fileOf(name).answers;
}

/** The plan of a demo home; throws with every fault when its file is not sound. */
export function planOf(
  name: string,
  changed: Record<string, string | number | string[] | number[]> = {},
): Plan {
  const { answers, asOf } = fileOf(name);
  return makePlan(interview, { ...answers, ...changed }, asOf!);
}

function fileOf(name: string) {
  const read = readHome(join(folder, `${name}.home.yaml`), interview);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read;
}

export function textOf(path: string): string {
  return readFileSync(path, 'utf8');
}
