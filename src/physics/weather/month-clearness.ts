import { bendtLaw, type ClearnessLaw, clearnessAt } from './bendt-law';
import { normalShare } from './normal-share';

/** Daily clearness of one calendar month at one place. */
export interface MonthClearness {
  mean: number;
  spread: number;
  /** The place's spread over that of the law: below 1 the law is drawn in, above 1 stretched. */
  stretch: number;
  /** Clearness of a day that stands `x` standard deviations up or down on a normal scale. */
  at(x: number): number;
}

/** No day is darker or clearer than this on a level surface. */
const DARKEST = 0.02;
export const CLEAREST = 0.85;

/**
 * The scatter of daily clearness in a month with the given mean and the place's own spread: the
 * Bendt law drawn in or stretched about the mean until its standard deviation is the place's. A mean
 * the law cannot hold (polar night, a sliver of sun) gives the mean every day.
 */
export function monthClearness(mean: number, spread: number | null): MonthClearness {
  const law = spread === null ? null : bendtLaw(mean);
  if (law === null || spread === null) {
    const steady = Math.min(Math.max(mean, 0), CLEAREST);
    return { mean: steady, spread: 0, stretch: 1, at: () => steady };
  }
  const stretch = spread / law.spread;
  return { mean, spread, stretch, at: (x) => stretched(law, stretch, normalShare(x)) };
}

function stretched(law: ClearnessLaw, stretch: number, below: number): number {
  const k = law.mean + stretch * (clearnessAt(law, below) - law.mean);
  return Math.min(Math.max(k, DARKEST), CLEAREST);
}
