import { mustBePositive, mustNotBeNegative } from '../quantity/must-be';

/** How often something happens, a year, as a gamma distribution: mean = shape / years. */
export interface GammaRate {
  readonly shape: number;
  /** How many years of watching the knowledge is worth. */
  readonly years: number;
}

/**
 * What the average customer's rate says of one household before it has told us anything: shape 1, so
 * that one household in ten sees a tenth of the mean and one in ten 2.3 times it. Our judgement: the
 * published figures are averages over customers and say nothing of their spread.
 */
export function priorRate(timesPerYear: number): GammaRate {
  mustBePositive('timesPerYear', timesPerYear, 'a year');
  return { shape: 1, years: 1 / timesPerYear };
}

/**
 * The rate after `count` in `years` of living there (gamma-Poisson, the usual conjugate update):
 *   shape + count, years + years
 */
export function learn(prior: GammaRate, seen: { count: number; years: number }): GammaRate {
  mustNotBeNegative('count', seen.count, '(times)');
  mustNotBeNegative('years', seen.years, 'years');
  return { shape: prior.shape + seen.count, years: prior.years + seen.years };
}

/** The mean of the rate, a year. */
export function meanRate(rate: GammaRate): number {
  return rate.shape / rate.years;
}

/** z of one in ten. */
const ONE_IN_TEN = 1.2816;

/**
 * The rates that one in ten such households is below, and one in ten above (Wilson & Hilferty 1931):
 *   mean (1 - 1/(9 k) +- z / (3 sqrt k))^3, within 7 % for a shape k of 1 or more.
 */
export function rateRange(rate: GammaRate): { low: number; high: number } {
  const middle = 1 - 1 / (9 * rate.shape);
  const step = ONE_IN_TEN / (3 * Math.sqrt(rate.shape));
  const mean = meanRate(rate);
  return { low: mean * Math.max(0, middle - step) ** 3, high: mean * (middle + step) ** 3 };
}

/**
 * Chance of none in `years`, when each is of the wanted sort with chance `share`, over all rates the
 * gamma allows: (b / (b + share years))^k.
 */
export function chanceOfNone(rate: GammaRate, share: number, years: number): number {
  return (rate.years / (rate.years + share * years)) ** rate.shape;
}
