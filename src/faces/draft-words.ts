import type { Draft, DraftLoad } from '../plan/draft';
import type { Figure } from '../quantity/figure';
import { formatRange } from '../quantity/format-quantity';

/** A figure with the range it may have. */
export function sayFigure({ low, value, high, unit }: Figure): string {
  return formatRange(low, value, high, unit);
}

/** The sums of the draft, one sentence each; empty while no load is named. */
export function sumWords(draft: Draft): string[] {
  const { runningWatts, startVa, kwhPerDay, day } = draft;
  return [
    runningWatts && `Running power: ${sayFigure(runningWatts)}`,
    startVa && `Starting demand: ${sayFigure(startVa)}`,
    kwhPerDay &&
      `Energy on ${day}: ${formatRange(kwhPerDay.low, kwhPerDay.value, kwhPerDay.high, 'kWh')}`,
  ].filter((words) => words !== null);
}

export const RANK_WORDS: Readonly<Record<DraftLoad['rank'], string>> = {
  must: 'Must keep running',
  good: 'Good to have',
  wait: 'Can wait',
};

/** Names of the loads of each rank that has any, must first. */
export function rankWords(draft: Draft): string[] {
  if (!draft.ranked) {
    const named = draft.loads.map((load) => load.name);
    return named.length === 0 ? [] : [`Named so far: ${named.join(', ')}`];
  }
  return (['must', 'good', 'wait'] as const).flatMap((rank) => {
    const names = draft.loads.filter((load) => load.rank === rank).map((load) => load.name);
    return names.length === 0 ? [] : [`${RANK_WORDS[rank]}: ${names.join(', ')}`];
  });
}

/** One sentence on how wide "not sure" leaves the sums; null while nothing is unsure. */
export function widthWords({ unsureCount, kwhPerDay, runningWatts }: Draft): string | null {
  if (unsureCount === 0) return null;
  const count = unsureCount === 1 ? '1 answer is' : `${unsureCount} answers are`;
  const named = `${count} "not sure"`;
  const figure = kwhPerDay ?? runningWatts;
  if (figure === null || figure.value <= 0) return `${named} so far.`;
  if (figure.low === figure.high) return `${named} so far.`;
  const less = Math.round((1 - figure.low / figure.value) * 100);
  const more = Math.round((figure.high / figure.value - 1) * 100);
  const what = kwhPerDay === null ? 'running power' : "day's energy";
  return `${named}: the ${what} may be ${less} % less or ${more} % more.`;
}

export const NOTHING_NAMED = 'Nothing that needs power is named yet.';

/** What stands beside the question when the sums themselves are at fault. */
export const NO_SUMS = 'No sums just now. Your answers are kept all the same.';
