import type { Figure } from '../quantity/figure';
import { formatQuantity } from '../quantity/format-quantity';
import { shownRange } from '../quantity/shown';
import type { ShownDraft, ShownLoad } from './shown-draft';

type Sums = Pick<ShownDraft, 'runningWatts' | 'startVa' | 'kwhPerDay' | 'season' | 'unsureCount'>;

/** A figure with the range it may have. */
export function sayFigure({ low, value, high, unit }: Figure): string {
  return shownRange({ low, value, high }, unit);
}

/** The sums of the draft, one sentence each; empty while no load is named. */
export function sumWords(draft: Sums): string[] {
  const { runningWatts, startVa, kwhPerDay, season } = draft;
  return [
    runningWatts && `Running power: ${sayFigure(runningWatts)}`,
    startVa && `Starting demand: ${sayFigure(startVa)}`,
    kwhPerDay && `Energy on a hard ${season} day: ${shownRange(kwhPerDay, 'kWh')}`,
  ].filter((words) => words !== null);
}

export const RANK_WORDS: Readonly<Record<ShownLoad['rank'], string>> = {
  must: 'Must keep running',
  good: 'Good to have',
  wait: 'Can wait',
};

const UNTOLD = 'Counted until you tell us';

/**
 * Names of the loads of each rank that has any, must first. What nobody told of is named only where it counts, and
 * as what it is.
 */
export function rankWords(draft: Pick<ShownDraft, 'ranked' | 'loads'>): string[] {
  const told = draft.loads.filter((load) => load.told);
  const untold = draft.loads.filter(
    (load) => !load.told && (!draft.ranked || load.rank === 'must'),
  );
  const groups = draft.ranked
    ? (['must', 'good', 'wait'] as const).map((rank) => ({
        head: RANK_WORDS[rank],
        loads: told.filter((load) => load.rank === rank),
      }))
    : [{ head: 'Named so far', loads: told }];
  return [...groups, { head: UNTOLD, loads: untold }]
    .filter(({ loads }) => loads.length > 0)
    .map(({ head, loads }) => `${head}: ${loads.map((load) => load.name).join(', ')}`);
}

/** One sentence on how wide "not sure" leaves the sums, in their own unit; null while nothing is unsure. */
export function widthWords({ unsureCount, kwhPerDay, runningWatts }: Sums): string | null {
  if (unsureCount === 0) return null;
  const count = unsureCount === 1 ? '1 answer is' : `${unsureCount} answers are`;
  const named = `${count} "not sure"`;
  const figure = kwhPerDay ?? runningWatts;
  if (figure === null || figure.value <= 0 || figure.low === figure.high) return `${named} so far.`;
  const unit = kwhPerDay === null ? figure.unit : 'kWh';
  const [low, high] = [figure.low, figure.high].map((end) => formatQuantity(end, unit));
  const what = kwhPerDay === null ? 'running power' : "day's energy";
  return `${named}: the ${what} may be as low as ${low} or as high as ${high}.`;
}

export const NOTHING_NAMED = 'Nothing that needs power is named yet.';

/** What stands beside the question when the sums themselves are at fault. */
export const NO_SUMS = 'No sums just now. Your answers are kept all the same.';
