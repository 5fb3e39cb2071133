import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import interview from '#compiled/questions.js';
import { Keeping } from '../../../src/commands/talk/keeping';
import type { Answers } from '../../../src/interview/answers';
import { HomeKeeper } from '../../../src/store/home-keeper';
import { parseHome } from '../../../src/store/read-home';
import { type Paper, writePapers } from '../../../src/store/write-papers';
import { seeded } from '../../fixtures/random-problem';
import { randomHome } from '../../random-home';
import { faultyDisk, TAKES_NOTHING, type Then } from '../../store/faulty-disk';
import { IN_MEMORY } from '../in-memory';
import { met, note, type Part, type Tally } from '../part';

/** Codes of a system, of which each home meets two: four homes meet all. */
const CODES = ['ENOSPC', 'EIO', 'EACCES', 'EDQUOT', 'EROFS', 'EMFILE', 'EBUSY', TAKES_NOTHING];

interface Trial {
  readonly at: number;
  readonly code: string;
  readonly then: Then;
  /** Bytes that one write takes. */
  readonly most: number;
}

/** Saves an answer more, and a plan's papers, with a fault at each step in turn: two codes a home, and dead from there on. */
export const disk: Part = {
  whole: 200,
  of: 'home saved',
  try(seed, tally) {
    const random = seeded(seed ^ 0xd15c);
    const answers = Object.entries({ ...randomHome(seed), 'home-name': 'kim' });
    const told = 1 + Math.floor(random() * (answers.length - 1));
    const before = Object.fromEntries(answers.slice(0, told));
    const after = Object.fromEntries(answers.slice(0, told + 1));
    const most = 40 + Math.floor(4000 * random() ** 3);
    for (const trial of trials(seed, most)) {
      const name = `home saved ${seed}: ${trial.code} at step ${trial.at}, then ${trial.then}`;
      if (!tryAnswer(name, before, after, trial, tally)) trial.last();
    }
    for (const trial of trials(seed, most)) {
      const name = `papers ${seed}: ${trial.code} at step ${trial.at}, then ${trial.then}`;
      if (!tryPapers(name, trial, tally)) trial.last();
    }
  },
};

/** One fault after another, for two codes and each end until there is no such step. */
function* trials(seed: number, most: number): Generator<Trial & { last(): void }> {
  const from = 2 * (seed % (CODES.length / 2));
  const two = CODES.slice(from, from + 2);
  for (const then of ['goes on', 'removes nothing', 'dead'] as const) {
    for (const code of then === 'goes on' ? two : ['EIO']) {
      let more = true;
      const last = () => {
        more = false;
      };
      for (let at = 1; more; at++) yield { at, code, then, most, last };
    }
  }
}

/** False where the saving has no such step. */
function tryAnswer(
  name: string,
  before: Answers,
  after: Answers,
  { at, code, then, most }: Trial,
  tally: Tally,
): boolean {
  return inFolder((folder) => {
    const path = join(folder, 'kim.home.yaml');
    new HomeKeeper(path, interview).keep({ answers: before, asOf: '2026-11-25' });
    const faulty = faultyDisk(at, code, then, most);
    const toKeep = {
      asOf: '2026-11-25',
      answers: before,
      unfinished: {},
      tariff: null,
      looking: null,
    };
    const keeping = new Keeping(toKeep, interview, () => path, faulty.disk);
    keeping.sitDown(path);
    faulty.arm();
    const saved = keeping.save(after, {});
    const reached = faulty.steps.length >= at;
    if (!reached) {
      keeping.leave();
      return false;
    }
    met(tally, `a fault at ${faulty.steps[at - 1]}`);
    const wrong: string[] = [];
    const there = answersIn(path);
    if (!same(there, before) && !same(there, after)) wrong.push('neither the old file nor the new');
    if (typeof saved !== 'string' && !same(there, after)) wrong.push('said to be kept and is not');
    const settled = keeping.settle(after, {});
    if (settled.missing.length === 0 && !same(answersIn(path), after))
      wrong.push('at the end nothing is said to be missing');
    faulty.disarm();
    if (then !== 'dead') {
      const again = keeping.settle(after, {});
      if (again.missing.length > 0 || !same(answersIn(path), after)) wrong.push('not mended after');
    }
    keeping.leave();
    const left = readdirSync(folder).filter((file) => file !== 'kim.home.yaml');
    if (then === 'goes on' && left.length > 0) wrong.push(`left behind: ${left.join(', ')}`);
    note(tally, name, 'an answer saved', wrong);
    return true;
  });
}

/** The papers of a plan belong together: both old, both new, or told which is which. */
function tryPapers(name: string, { at, code, then, most }: Trial, tally: Tally): boolean {
  return inFolder((folder) => {
    const papers = (words: string): Paper[] =>
      ['kim.plan.yaml', 'kim.plan.md'].map((file) => ({
        file,
        text: `${`${words} `.repeat(60)}\n`,
        comment: (text) => `# ${text}`,
      }));
    writePapers(folder, papers('old'), false);
    const faulty = faultyDisk(at, code, then, most);
    faulty.arm();
    const written = writePapers(folder, papers('new'), false, faulty.disk);
    if (faulty.steps.length < at) return false;
    faulty.disarm();
    const wrong: string[] = [];
    const now = papers('').map(({ file }) => {
      const text = readFileSync(join(folder, file), 'utf8');
      return /^(old )+\n# .*\n$/.test(text)
        ? 'old'
        : /^(new )+\n# .*\n$/.test(text)
          ? 'new'
          : 'mixed';
    });
    if (now.includes('mixed')) wrong.push('a paper is neither old nor new');
    if (written.ok && now.includes('old')) wrong.push('said to be written and is not');
    if (!written.ok && new Set(now).size > 1 && !written.says.includes('These are the new ones'))
      wrong.push('one is new and one old, and nobody is told');
    if (!writePapers(folder, papers('new'), false).ok) wrong.push('not mended after');
    note(tally, name, 'papers written', wrong);
    return true;
  });
}

function inFolder<T>(what: (folder: string) => T): T {
  const folder = mkdtempSync(join(IN_MEMORY, 'lampkeeper-soak-'));
  try {
    return what(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function answersIn(path: string): Answers | null {
  const read = parseHome(readFileSync(path, 'utf8'), interview);
  return read.ok ? read.answers : null;
}

function same(one: Answers | null, other: Answers): boolean {
  const sorted = (answers: Answers) => JSON.stringify(Object.entries(answers).sort());
  return one !== null && sorted(one) === sorted(other);
}
