import { HOURS_PER_YEAR } from '../../physics/weather/calendar';
import { monthOfHour } from '../month-of-hour';
import { OUTAGE_LENGTHS } from '../ride-through-odds';
import type { Failure } from './failure';
import { manyWalks } from './many-walks';
import { MonthTally, type ShareWithError } from './month-tally';
import { requireRecord, type WalkRecord, type WalkSystem } from './system';
import { type Walked, walkChecked } from './walk';

/** Start hours this far apart come upon every hour of the day and every season: 37 shares no factor with 24. */
export const SAMPLE_EVERY_HOURS = 37;

export interface SampleInput {
  readonly system: WalkSystem;
  readonly record: WalkRecord;
  readonly startKwh: number;
  readonly lengths?: readonly number[];
  /** 1 walks every start hour. */
  readonly everyHours?: number;
  /** Months of `season` in the result, 0 January; without it the whole year. */
  readonly seasonMonths?: readonly number[];
  /** Walk the starts in those months only: the months and the year then stand for them alone. */
  readonly onlySeason?: boolean;
  /** Walk no further than the first hour not served: about as good as free when most outages fail early. */
  readonly untilFailure?: boolean;
}

export interface SampledOdds {
  readonly hours: number;
  /** 12 entries, January first; null where no start hour falls. */
  readonly months: readonly (ShareWithError | null)[];
  readonly all: ShareWithError | null;
  /** The starts in the asked months taken together. */
  readonly season: ShareWithError | null;
  /** What failed first, how often, of the outages that were not ridden through. */
  readonly failures: Readonly<Partial<Record<Failure, number>>>;
  /** Means over the walked outages, of the longest length only; null for the others, and with `untilFailure`. */
  readonly unserved: { hours: number; kWh: number; shedKwh: number } | null;
}

/**
 * The odds of riding through, from walks that start every 37 hours: a sample, with its standard error.
 * One walk of the longest outage answers for the shorter ones too, since an hour does not know how long
 * the outage will be. A record shorter than an outage has no odds for it.
 */
export function sampleOutages(input: SampleInput): SampledOdds[] {
  const { system, record, startKwh, untilFailure = false, lengths = OUTAGE_LENGTHS } = input;
  const every = input.everyHours ?? SAMPLE_EVERY_HOURS;
  requireRecord(record, system);
  const count = record.solarKw.length;
  const longest = Math.max(...lengths);
  const starts: number[] = [];
  const walks: Walked[] = [];
  const walk = manyWalks(system, record);
  const season = input.seasonMonths ?? ALL_MONTHS;
  for (let start = 0; start < count; start += every) {
    if (input.onlySeason && !season.includes(monthOfHour(start % HOURS_PER_YEAR))) continue;
    starts.push(start);
    const outage = { start, outageHours: longest, startKwh };
    walks.push(untilFailure ? walk(outage) : walkChecked({ system, record, ...outage }));
  }
  return lengths.map((hours) =>
    oddsFor(hours, hours === longest && !untilFailure, count, starts, walks, season),
  );
}

function oddsFor(
  hours: number,
  whole: boolean,
  count: number,
  starts: readonly number[],
  walks: readonly Walked[],
  season: readonly number[],
): SampledOdds {
  const tooShort = count < hours;
  const tally = new MonthTally(count);
  const failures: Partial<Record<Failure, number>> = {};
  walks.forEach((walk, i) => {
    if (tooShort) return;
    const rode = walk.hoursServed >= hours;
    tally.add(starts[i]!, rode);
    if (!rode && walk.failure) failures[walk.failure] = (failures[walk.failure] ?? 0) + 1;
  });
  const mean = (value: (walk: Walked) => number) =>
    walks.reduce((sum, walk) => sum + value(walk), 0) / walks.length;
  const unserved =
    whole && !tooShort
      ? {
          hours: mean((walk) => walk.unservedHours),
          kWh: mean((walk) => walk.unservedKwh),
          shedKwh: mean((walk) => walk.shedKwh),
        }
      : null;
  const months = ALL_MONTHS.map((month) => tally.share([month]));
  const [all, seasonal] = [tally.share(ALL_MONTHS), tally.share(season)];
  return { hours, months, all, season: seasonal, failures, unserved };
}

const ALL_MONTHS = Array.from({ length: 12 }, (_, month) => month);
