import interview from '#compiled/questions.js';
import { likeliestFirst } from '../../src/advice/likeliest-first';
import { liveAdvice } from '../../src/advice/live-advice';
import type { Answers } from '../../src/interview/answers';
import { outageHours } from '../fixtures/outage-hours';
import { bankForTalks, talkHomes } from './talk';

/** One run of the live advice at the middle, ms of processor time, where a plain sum takes `SUM_MS`. */
const LIMIT_MS = 8;
/** A plain sum of a hundred years of hours between two lists, on the machine the limit is set for: the least of 289, ms. */
const SUM_MS = 0.75;
const HOURS = 876_000;
/** Answers of a talk from its first plan to its end. */
const TOLD = { from: 12, to: 44 };
/** What was remembered costs nothing and is left out, ms. */
const REMEMBERED_MS = 0.3;

export interface Measured {
  readonly lines: readonly string[];
  /** Above its limit: the bench fails. */
  readonly over: boolean;
}

/** Passes over all homes: the least counts, as other work only adds. */
const PASSES = 3;

/**
 * What is advised beside the question, each time one more answer of a home is told: processor time of the whole list, once its trial
 * is made, beside a plain sum taken before each, so that a slow or busy machine is no fault.
 */
export function benchLiveAdvice(): Measured {
  const hours = outageHours(HOURS);
  for (let i = 0; i < 50; i++) plainSum(hours);
  const passes = Array.from({ length: PASSES }, () => onePass(hours));
  const least = passes.reduce((a, b) => (b.ms < a.ms ? b : a));
  const over = !(least.ms <= LIMIT_MS);
  const each = passes.map(({ ms }) => ms.toFixed(1)).join(', ');
  return {
    lines: [
      ...least.lines,
      `live advice at the middle, where a plain sum takes ${SUM_MS} ms: ${each} ms; the least at most ${LIMIT_MS}${over ? ': OVER' : ''}`,
    ],
    over,
  };
}

function onePass(hours: Float64Array): { lines: string[]; ms: number } {
  const sums: number[] = [];
  const all: number[] = [];
  const lines = [...talkHomes('test')].map(([name, home]) => {
    const { trialOf } = bankForTalks();
    const here = tellingMore(home).map((answers) => {
      const trial = trialOf(answers);
      sums.push(spent(() => plainSum(hours)));
      return spent(() => liveAdvice(trial));
    });
    const worked = here.filter((ms) => ms > REMEMBERED_MS);
    all.push(...worked);
    const [middle, most] = [0.5, 0.95].map((share) => at(worked, share).toFixed(1));
    return `  ${name.padEnd(13)} ${middle} ms at the middle, ${most} ms for 95 of 100, of ${worked.length}`;
  });
  const [middle, sum] = [at(all, 0.5), at(sums, 0.5)];
  return {
    lines: [
      ...lines,
      `  all           ${middle.toFixed(1)} ms at the middle, a plain sum ${sum.toFixed(2)} ms`,
    ],
    ms: (middle * SUM_MS) / sum,
  };
}

/** The answers of a home in the order of a talk, one more each time. */
function tellingMore(home: Answers): Answers[] {
  const ids = [...interview.opening, ...likeliestFirst(interview.questions).map(({ id }) => id)];
  const told = [...new Set(ids)].filter((id) => home[id] !== undefined);
  const upTo = (count: number): Answers =>
    Object.fromEntries(told.slice(0, count).map((id) => [id, home[id]!]));
  return told.map((_, i) => upTo(i + 1)).slice(TOLD.from - 1, TOLD.to);
}

function plainSum(hours: Float64Array): number {
  let sum = 0;
  for (let t = 0; t < hours.length; t++) sum += hours[t]!;
  return sum;
}

function spent(work: () => unknown): number {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

function at(all: readonly number[], share: number): number {
  const sorted = [...all].sort((a, b) => a - b);
  return sorted[Math.floor(share * (sorted.length - 1))] ?? Number.NaN;
}
