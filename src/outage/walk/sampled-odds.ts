import { monthOfHour } from '../month-of-hour';
import { OUTAGE_LENGTHS } from '../ride-through-odds';
import { type ShareWithError, shareWithError } from './share-error';
import type { WalkRecord, WalkSystem } from './system';
import { type Failure, type Walked, walkOutage } from './walk';

/** Start hours this far apart come upon every hour of the day and every season: 37 shares no factor with 24. */
export const SAMPLE_EVERY_HOURS = 37;

export interface SampleInput {
  readonly system: WalkSystem;
  readonly record: WalkRecord;
  readonly startKwh: number;
  readonly lengths?: readonly number[];
  /** 1 walks every start hour. */
  readonly everyHours?: number;
}

export interface SampledOdds {
  readonly hours: number;
  /** 12 entries, January first; null where no start hour falls. */
  readonly months: readonly (ShareWithError | null)[];
  readonly all: ShareWithError | null;
  /** What failed first, how often, of the outages that were not ridden through. */
  readonly failures: Readonly<Partial<Record<Failure, number>>>;
  /** Means over the walked outages of the longest length only; null for the shorter ones. */
  readonly unserved: { hours: number; kWh: number; shedKwh: number } | null;
}

/**
 * The odds of riding through, from walks that start every 37 hours: a sample, with its standard error.
 * One walk of the longest outage answers for the shorter ones too, since an hour does not know how long
 * the outage will be. A record shorter than an outage has no odds for it.
 */
export function sampleOutages(input: SampleInput): SampledOdds[] {
  const { system, record, startKwh, lengths = OUTAGE_LENGTHS } = input;
  const every = input.everyHours ?? SAMPLE_EVERY_HOURS;
  const count = record.solarKw.length;
  const longest = Math.max(...lengths);
  const starts: number[] = [];
  const walks: Walked[] = [];
  for (let start = 0; start < count; start += every) {
    starts.push(start);
    walks.push(walkOutage({ system, record, start, outageHours: longest, startKwh }));
  }
  return lengths.map((hours) => oddsFor(hours, hours === longest, count, starts, walks));
}

function oddsFor(
  hours: number,
  whole: boolean,
  count: number,
  starts: readonly number[],
  walks: readonly Walked[],
): SampledOdds {
  const rode = count < hours ? [] : walks.map((walk) => walk.hoursServed >= hours);
  const of = (month: number | null) => {
    const kept = rode.flatMap((yes, i) => {
      const start = starts[i]!;
      return month === null || monthOfHour(start) === month ? [{ start, yes }] : [];
    });
    return shareWithError(kept);
  };
  const failures: Partial<Record<Failure, number>> = {};
  rode.forEach((yes, i) => {
    const why = walks[i]!.failure;
    if (!yes && why) failures[why] = (failures[why] ?? 0) + 1;
  });
  const mean = (value: (walk: Walked) => number) =>
    walks.reduce((sum, walk) => sum + value(walk), 0) / walks.length;
  const unserved =
    whole && rode.length > 0
      ? {
          hours: mean((walk) => walk.unservedHours),
          kWh: mean((walk) => walk.unservedKwh),
          shedKwh: mean((walk) => walk.shedKwh),
        }
      : null;
  const months = Array.from({ length: 12 }, (_, month) => of(month));
  return { hours, months, all: of(null), failures, unserved };
}
