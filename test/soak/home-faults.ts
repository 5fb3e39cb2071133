import type { Answers } from '../../src/interview/answers';
import { completeHome } from '../complete-home';
import { randomHome } from '../random-home';
import { type Hazard, hazards } from './hazards';
import { randomInterview } from './interviews';
import { held } from './never';
import { type Seen, seenOf } from './seen';
import { notQuiet, notTold, withHazard } from './twins';

/** Of so many homes one is planned twice, to the byte. */
const TWICE = 20;

/** Of so many interviews one is planned. */
const PLANNED = 5;

/** What a run over homes has met: how often each thing held spoke, and what was wrong. */
export interface Tally {
  /** Seed, what was held, and how it was broken: enough to see it again. */
  readonly faults: string[];
  /** By name, of how many plans it said something. */
  readonly spoke: Record<string, number>;
}

/** A home of this seed: one that knows itself, or one that does not. */
const sorts = { complete: completeHome, any: randomHome };

/** Plans a home made up and the same home with a hazard, and takes down all that is wrong with either. */
export function tryHome(sort: keyof typeof sorts, seed: number, tally: Tally): void {
  const hazard = hazards[seed % hazards.length]!;
  const answers = sorts[sort](seed);
  const name = `${sort} home ${seed}`;
  const plain = tryPlan(name, answers, tally);
  if (plain !== null && seed % TWICE === 0) {
    const again = seenOf(answers);
    note(tally, name, 'the same plan again', again.file === plain.file ? [] : ['differs']);
  }
  const told = withHazard(answers, hazard);
  if (told !== null) tryHazard(`${name} with ${hazard.rule}`, hazard, told, tally);
}

/** Leads an interview by chance, and of some plans what came of it. */
export function tryInterview(seed: number, tally: Tally): void {
  const name = `interview ${seed}`;
  try {
    const { answers, wrong } = randomInterview(seed);
    note(tally, name, 'an interview', wrong);
    if (seed % PLANNED === 0) tryPlan(name, answers, tally);
  } catch (thrown) {
    tally.faults.push(thrownAt(name, thrown));
  }
}

function tryHazard(name: string, hazard: Hazard, told: Answers, tally: Tally): void {
  const seen = tryPlan(name, told, tally);
  if (seen === null) return;
  note(tally, name, 'a hazard is told of', notTold(hazard, seen));
  note(tally, name, 'its twin is quiet', notQuiet(hazard, told, seen.plan.asOf));
}

function tryPlan(name: string, answers: Answers, tally: Tally): Seen | null {
  try {
    const seen = seenOf(answers);
    for (const [what, holds] of Object.entries(held)) {
      const wrong = holds(seen);
      if (wrong !== null) note(tally, name, what, wrong);
    }
    return seen;
  } catch (thrown) {
    tally.faults.push(thrownAt(name, thrown));
    return null;
  }
}

const thrownAt = (name: string, thrown: unknown) =>
  `${name}: throws: ${(thrown as Error).stack ?? thrown}`;

function note(tally: Tally, name: string, what: string, wrong: readonly string[]): void {
  tally.spoke[what] = (tally.spoke[what] ?? 0) + 1;
  for (const says of wrong) tally.faults.push(`${name}: ${what}: ${says}`);
}
