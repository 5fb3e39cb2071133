// `npm run plans -- [FILE]` writes the codes of 64 plans; `npm run plans -- --against FILE` says what differs now.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import interview from '#compiled/questions.js';
import type { Answers } from '../../src/interview/answers';
import { makePlan } from '../../src/plan/make-plan';
import { readHome } from '../../src/store/read-home';
import { planCodes } from '../plan-codes';
import { randomHome } from '../random-home';
import type { Codes } from './codes-in';
import { differences } from './differences';

const DEMOS = ['birch-street', 'tower-six', 'ridge-road', 'mill-lane'];
const RANDOM_HOMES = 60;
/** Drawn years of weather: codes hang on them by their digits alone. */
const YEARS = 5;
const AS_OF = '2026-11-25';
/** Lines printed of one home. */
const LINES = 20;

function demo(name: string): Answers {
  const read = readHome(`test/households/${name}.home.yaml`, interview);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.answers;
}

function codesNow(): Record<string, Codes> {
  const homes: [string, Answers][] = [
    ...DEMOS.map((name): [string, Answers] => [name, demo(name)]),
    ...Array.from({ length: RANDOM_HOMES }, (_, n): [string, Answers] => [
      `seed ${n + 1}`,
      randomHome(n + 1),
    ]),
  ];
  return Object.fromEntries(
    homes.map(([name, answers]) => [name, planCodes(makePlan(interview, answers, AS_OF, YEARS))]),
  );
}

function compare(file: string): number {
  const was = JSON.parse(readFileSync(file, 'utf8')) as Record<string, Codes>;
  const is = codesNow();
  let differing = 0;
  for (const name of new Set([...Object.keys(was), ...Object.keys(is)])) {
    const lines = differences(was[name], is[name]);
    if (lines.length === 0) continue;
    differing++;
    console.log(`${name}: ${lines.length} differ`);
    for (const line of lines.slice(0, LINES)) console.log(`  ${line}`);
    if (lines.length > LINES) console.log(`  and ${lines.length - LINES} more`);
  }
  console.log(`${differing} of ${Object.keys(is).length} plans differ from ${file}`);
  return differing > 0 ? 1 : 0;
}

function write(file: string): number {
  mkdirSync(dirname(file), { recursive: true });
  const codes = codesNow();
  writeFileSync(file, `${JSON.stringify(codes, null, 1)}\n`);
  console.log(`Codes of ${Object.keys(codes).length} plans are in ${file}`);
  return 0;
}

const [first, second] = process.argv.slice(2);
process.exitCode =
  first === '--against' && second !== undefined
    ? compare(second)
    : write(first ?? 'dist/plans.json');
