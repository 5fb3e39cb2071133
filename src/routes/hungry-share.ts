import type { Load, Season } from '../home/home';
import { type HourSeries, largestOf, sameSeries } from '../quantity/hour-series';
import { LastOnes } from '../quantity/last-ones';

/** What these loads use on a hard day at the high end of every one, over what they are likely to use; at least 1. */
export function hungryShare(loads: readonly Load[], season: Season): number {
  const day = (end: 'value' | 'high') =>
    loads.reduce((sum, load) => sum + load.kwhPerDay[season][end], 0);
  const likely = day('value');
  return likely > 0 ? Math.max(1, day('high') / likely) : 1;
}

interface Hungry {
  readonly likelyKw: HourSeries;
  readonly share: number;
  readonly mostKw: number;
  readonly kw: Float64Array;
}

/** Few, for each may be a hundred years of hours. */
const kept = new LastOnes<Hungry>(2);

/**
 * Hours at hungry use, kW. It speaks of energy alone: no hour is lifted above what the source gives. The last ones made are
 * kept, since routes are asked for the same hours several times in a row. Not to be written to.
 */
export function hungryKw(likelyKw: HourSeries, share: number, mostKw: number): HourSeries {
  if (share === 1) return likelyKw;
  // A source above every hour lifts them all alike, however large it is.
  const limitKw = mostOf(likelyKw) * share <= mostKw ? Infinity : mostKw;
  const known = kept.find(
    (made) =>
      made.share === share && made.mostKw === limitKw && sameSeries(made.likelyKw, likelyKw),
  );
  if (known !== undefined) return known.kw;
  const kw = raisedKw(likelyKw, share, limitKw);
  return kept.put({ likelyKw, share, mostKw: limitKw, kw }).kw;
}

function raisedKw(likelyKw: HourSeries, share: number, mostKw: number): Float64Array {
  const kw = new Float64Array(likelyKw.length);
  for (let i = 0; i < kw.length; i++) {
    const likely = likelyKw[i]!;
    kw[i] = Math.max(likely, Math.min(likely * share, mostKw));
  }
  return kw;
}

const most = new WeakMap<HourSeries, number>();

/** The largest of all hours, looked for once in each series. */
function mostOf(hours: HourSeries): number {
  const known = most.get(hours);
  if (known !== undefined) return known;
  const found = largestOf(hours);
  most.set(hours, found);
  return found;
}
