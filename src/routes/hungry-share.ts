import type { Load, Season } from '../home/home';

/** What these loads use on a hard day at the high end of every one, over what they are likely to use; at least 1. */
export function hungryShare(loads: readonly Load[], season: Season): number {
  const day = (end: 'value' | 'high') =>
    loads.reduce((sum, load) => sum + load.kwhPerDay[season][end], 0);
  const likely = day('value');
  return likely > 0 ? Math.max(1, day('high') / likely) : 1;
}

/** Hours at hungry use, kW. It speaks of energy alone: no hour is lifted above what the source gives. */
export function hungryKw(likelyKw: Float64Array, share: number, mostKw: number): Float64Array {
  return likelyKw.map((kw) => Math.max(kw, Math.min(kw * share, mostKw)));
}
