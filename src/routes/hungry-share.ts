import type { Load, Season } from '../home/home';
import type { HourSeries } from '../quantity/hour-series';

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

let last: Hungry | null = null;

/**
 * Hours at hungry use, kW. It speaks of energy alone: no hour is lifted above what the source gives. The last ones made are
 * kept, since a route is asked for the same hours several times in a row. Not to be written to.
 */
export function hungryKw(likelyKw: HourSeries, share: number, mostKw: number): Float64Array {
  if (last?.likelyKw === likelyKw && last.share === share && last.mostKw === mostKw) return last.kw;
  const kw = raisedKw(likelyKw, share, mostKw);
  last = { likelyKw, share, mostKw, kw };
  return kw;
}

/** The same, made anew. */
export function raisedKw(likelyKw: HourSeries, share: number, mostKw: number): Float64Array {
  const kw = new Float64Array(likelyKw.length);
  for (let i = 0; i < kw.length; i++) {
    const likely = likelyKw[i]!;
    kw[i] = Math.max(likely, Math.min(likely * share, mostKw));
  }
  return kw;
}
