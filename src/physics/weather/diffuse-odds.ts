import { withOdds } from '../sun/diffuse-share';

/** Odds are looked for between these, as natural logarithms; a month without sun, or all of one kind, ends there. */
const WIDEST_LOG_ODDS = 7;

/** The days of one calendar month, all years together: sun on the level in any unit, and the general law's diffuse share. */
export interface DaysOfSun {
  readonly sun: Float64Array;
  readonly share: Float64Array;
}

/**
 * By what factor the odds of each day's diffuse share are to be taken so that the days together have the wished share
 * `wishedShare` of their sun from the whole sky (0 to 1). 1 where there is no sun. Found by halving: the sum rises with the odds.
 */
export function diffuseOdds({ sun, share }: DaysOfSun, wishedShare: number): number {
  let whole = 0;
  for (let i = 0; i < sun.length; i++) whole += sun[i]!;
  if (!(whole > 0)) return 1;
  const wished = wishedShare * whole;
  let low = -WIDEST_LOG_ODDS;
  let high = WIDEST_LOG_ODDS;
  for (let i = 0; i < 20; i++) {
    const middle = (low + high) / 2;
    if (diffuseSum(sun, share, Math.exp(middle)) < wished) low = middle;
    else high = middle;
  }
  return Math.exp((low + high) / 2);
}

function diffuseSum(sun: Float64Array, share: Float64Array, odds: number): number {
  let sum = 0;
  for (let i = 0; i < sun.length; i++) sum += sun[i]! * withOdds(share[i]!, odds);
  return sum;
}
