import { emptyTally, type Tally, tryPart } from './part';
import { parts } from './parts';

/** Of every so many tries of a whole run one is made in a test; `npm run soak` makes all. */
const SHARE = 100;

/** Tries of the parts that take longest, fewer than a hundredth: what fits in the time of a test run. */
const FIT: Readonly<Record<string, number>> = {
  interviews: 30,
  homes: 20,
  files: 40,
  keys: 20,
  enough: 1,
  'enough-even': 1,
};
/**
 * Where a part begins in a test, if not at 1: at homes with short talks, for one of 36 answers is dearer than four of
 * these, at sittings that last a second and not five, and at homes with few answers and short writes.
 */
const FROM: Readonly<Record<string, number>> = {
  enough: 16,
  'enough-even': 26,
  kills: 45,
  disk: 7,
};

/** Which parts share a test file: long ones in files of their own, so that files can be run beside each other. */
export const together = {
  plans: ['hazards', 'homes'],
  talks: ['enough', 'enough-even', 'interviews', 'lists'],
  ways: ['agree', 'moves', 'pane', 'sheets', 'what-if'],
  storage: ['disk', 'files'],
  terminals: ['kills', 'keys'],
} as const;

/** A hundredth of a part, at least two tries, or as many as fit; what was met, and every fault. */
export async function firstHundredth(name: string, tally: Tally = emptyTally()): Promise<Tally> {
  const part = parts[name]!;
  const count = FIT[name] ?? Math.max(2, Math.ceil(part.whole / SHARE));
  const from = FROM[name] ?? 1;
  for (let seed = from; seed < from + count; seed++) await tryPart(part, seed, tally, 'light');
  return tally;
}

/** Minutes on a busy machine, seconds on another, ms. */
export const LONG_MS = 240_000;
