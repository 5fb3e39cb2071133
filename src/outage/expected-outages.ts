import { limitedMeanLength } from '../physics/limited-mean-length';
import { chanceLonger } from '../physics/lognormal-length';
import { mustNotBeNegative } from '../quantity/must-be';
import { nationalOutages, type OrdinaryAndMajor, stateOutages } from '../tables/outage-statistics';
import { chanceOfNone, type GammaRate, learn, meanRate, priorRate, rateRange } from './outage-rate';

/** What the household has lived through; leave out what it does not know. */
export interface LivedOutages {
  /** Outages a year, as they remember the last years. */
  readonly timesPerYear?: number;
  /** Longest in the last five years, hours. */
  readonly longestHours?: number;
}

export interface OutageOutlook {
  readonly ordinary: { rate: GammaRate; meanHours: number };
  readonly major: { rate: GammaRate; meanHours: number };
  /** The state's figures went in; otherwise only the nation's. */
  readonly fromState: boolean;
}

/** How many years the household's memory of how often is taken to cover, and of the longest one. */
const REMEMBERED_YEARS = 3;
const LONGEST_YEARS = 5;
/** From this length an outage counts as a major one: over four times the ordinary mean of about 2 hours. */
const MAJOR_HOURS = 8;

/**
 * What to expect at this home: ordinary outages and major ones, each with a rate and a mean length.
 * The start is the state's average customer, half and half with the nation's, since ten years
 * hold few major events; then the household's own years are learned from. Short blinks a household counts and
 * the published figures do not make the ordinary rate err upwards. Weak evidence, to be said so.
 */
export function outageOutlook(state: string | null, lived: LivedOutages = {}): OutageOutlook {
  const local = state === null ? null : stateOutages(state);
  const start = local ? blend(local, nationalOutages()) : nationalOutages();
  const { timesPerYear, longestHours } = lived;
  let ordinary = priorRate(start.ordinary.timesPerYear);
  let major = priorRate(start.major.timesPerYear);
  let majorHours = start.major.meanHours;
  let majorsSeen = 0;
  if (longestHours !== undefined) {
    mustNotBeNegative('longestHours', longestHours, 'h');
    majorsSeen = longestHours >= MAJOR_HOURS ? 1 : 0;
    major = learn(major, { count: majorsSeen, years: LONGEST_YEARS });
    // one lived event against two published means, on the scale of ratios
    if (majorsSeen) majorHours = (majorHours * majorHours * longestHours) ** (1 / 3);
  }
  if (timesPerYear !== undefined) {
    mustNotBeNegative('timesPerYear', timesPerYear, 'a year');
    const majors = (majorsSeen * REMEMBERED_YEARS) / LONGEST_YEARS;
    const count = Math.max(0, timesPerYear * REMEMBERED_YEARS - majors);
    ordinary = learn(ordinary, { count, years: REMEMBERED_YEARS });
  }
  return {
    ordinary: { rate: ordinary, meanHours: start.ordinary.meanHours },
    major: { rate: major, meanHours: majorHours },
    fromState: local !== null,
  };
}

/** Times and hours a year of each sort: likely, and the range one in ten lies below and above. */
export interface YearlyOutages {
  readonly times: { low: number; value: number; high: number };
  readonly hours: { low: number; value: number; high: number };
}

/** A mean length is known within a factor of two at best. */
const LENGTH_FACTOR = 2;

/** Outages and outage hours to expect in a year, ordinary and major apart. */
export function yearlyOutages(outlook: OutageOutlook): {
  ordinary: YearlyOutages;
  major: YearlyOutages;
} {
  return { ordinary: yearly(outlook.ordinary), major: yearly(outlook.major) };
}

/** Spread of the logarithm of outage lengths: no national source pins it down, so a range. */
const SIGMA = { low: 1, value: 1.35, high: 1.7 } as const;

/**
 * Chance of at least one outage of `hours` or longer within `years`, with a range over the spread of
 * lengths and over households. Weak evidence: the published means say little of the tail.
 */
export function chanceOfLongOutage(
  outlook: OutageOutlook,
  { hours, years = 10 }: { hours: number; years?: number },
): { low: number; value: number; high: number; evidence: 'weak' } {
  const chance = (sigma: number, none: typeof chanceOfNone) =>
    1 -
    [outlook.ordinary, outlook.major].reduce((all, { rate, meanHours }) => {
      return all * none(rate, chanceLonger({ hours, meanHours, sigma }), years);
    }, 1);
  const fixed = (side: 'low' | 'high') => (rate: GammaRate, share: number, span: number) =>
    Math.exp(-rateRange(rate)[side] * share * span);
  const spread = Object.values(SIGMA);
  const value = chance(SIGMA.value, chanceOfNone);
  const low = Math.min(value, ...spread.map((sigma) => chance(sigma, fixed('low'))));
  const high = Math.max(value, ...spread.map((sigma) => chance(sigma, fixed('high'))));
  return { low, value, high, evidence: 'weak' };
}

/**
 * Outage hours of a year that a source is expected to carry that lasts so long from the start of each outage:
 *   times a year x E[min(length, lasts)]
 * Lengths are lognormal about their mean, so most are far shorter than it and a few far longer. `lastsHours` null: it
 * outlasts them all.
 */
export function carriedHours(given: {
  timesPerYear: number;
  hoursPerYear: number;
  lastsHours: number | null;
}): number {
  const { timesPerYear, hoursPerYear, lastsHours } = given;
  if (!(timesPerYear > 0 && hoursPerYear > 0)) return 0;
  if (lastsHours === null) return hoursPerYear;
  const meanHours = hoursPerYear / timesPerYear;
  return timesPerYear * limitedMeanLength({ hours: lastsHours, meanHours, sigma: SIGMA.value });
}

function yearly({ rate, meanHours }: { rate: GammaRate; meanHours: number }): YearlyOutages {
  const { low, high } = rateRange(rate);
  const value = meanRate(rate);
  return {
    times: { low, value, high },
    hours: {
      low: (low * meanHours) / LENGTH_FACTOR,
      value: value * meanHours,
      high: high * meanHours * LENGTH_FACTOR,
    },
  };
}

function blend(one: OrdinaryAndMajor, two: OrdinaryAndMajor): OrdinaryAndMajor {
  const mixed = (a: OrdinaryAndMajor['major'], b: OrdinaryAndMajor['major']) => {
    const timesPerYear = (a.timesPerYear + b.timesPerYear) / 2;
    const hours = (a.timesPerYear * a.meanHours + b.timesPerYear * b.meanHours) / 2;
    return { timesPerYear, meanHours: hours / timesPerYear };
  };
  return { ordinary: mixed(one.ordinary, two.ordinary), major: mixed(one.major, two.major) };
}
