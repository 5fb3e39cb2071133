import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import interview from '#compiled/questions.js';
import type { Answers } from '../../src/interview/answers';
import type { Plan } from '../../src/plan/plan';
import { readHome } from '../../src/store/read-home';
import { frozenPlan } from '../frozen-plans';

/** The folder with the demo homes: our own invention, examples and not outside checks. */
export const folder = import.meta.dirname;

/** The answers of a demo home; throws with every fault when its file is not sound. */
export function answersOf(name: string): Answers {
  return fileOf(name).answers;
}

/** Drawn years where a test names none: enough where no odds are looked at closely. */
const FEW_YEARS = 5;

/**
 * The frozen plan of a demo home, some answers changed; throws with every fault when its file is not sound.
 * @param years drawn years of weather; `WEATHER_YEARS` are those of a household's plan
 */
export function planOf(
  name: string,
  changed: Record<string, string | number | string[] | number[]> = {},
  years = FEW_YEARS,
): Plan {
  const { answers, asOf } = fileOf(name);
  return frozenPlan({ ...answers, ...changed }, asOf!, years);
}

const files = new Map<string, ReturnType<typeof readDemo>>();

function fileOf(name: string) {
  const known = files.get(name);
  if (known) return known;
  const read = readDemo(name);
  files.set(name, read);
  return read;
}

function readDemo(name: string) {
  const read = readHome(join(folder, `${name}.home.yaml`), interview);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read;
}

export function textOf(path: string): string {
  return readFileSync(path, 'utf8');
}
