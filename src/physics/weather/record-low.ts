/** What a monthly climate tells of its cold. */
export interface ColdOfMonths {
  /** Mean of each month, C. */
  readonly meanC: readonly number[];
  /** Mean daily range of each month, K. */
  readonly rangeK: readonly number[];
  /** Standard deviation of a winter day's mean, K. */
  readonly winterSpreadK: number;
}

/** A day this many standard deviations below its month comes about once in many winters. Our judgement. */
const SPREADS = 4;
/** Added on the careful side: typical years leave out the extremes of single years. Our judgement. */
const MARGIN_K = 5;
/** Lowest ever measured in the United States, C: -80 F, Prospect Creek, Alaska, 1971 (state climate extremes, NOAA). */
const LOWEST_C = -62.2;

/**
 * A careful figure for the lowest temperature on record, C: in the coldest month a day four standard deviations below the
 * mean, at its night, and 5 K below that. Held against published records of airports in `test/against`: never more than
 * 3 K too warm there. NEC 690.7 asks less, the mean of each year's lowest.
 */
export function recordLowC({ meanC, rangeK, winterSpreadK }: ColdOfMonths): number {
  const nights = meanC.map((mean, i) => mean - rangeK[i]! / 2 - SPREADS * winterSpreadK);
  return Math.max(LOWEST_C, Math.min(...nights) - MARGIN_K);
}
