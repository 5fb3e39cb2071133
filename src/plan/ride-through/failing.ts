import { sampledStarts } from '../../advice/ride/sampled-starts';
import type { Walkable } from '../../advice/ride/walkable';
import { quantileInPlace } from '../../outage/quantile';
import type { Failure } from '../../outage/walk/failure';
import { manyWalks } from '../../outage/walk/many-walks';
import type { Route } from '../../routes/route';
import { LENGTHS } from './lengths';

/** What fails first within two weeks, of outages that start in the season, and when. */
export interface Failing {
  /** The commonest first failure; null when nothing fails. */
  readonly failure: Failure | null;
  /** Share of the outages that fail, 0 to 1, and the middle of their hours until then. */
  readonly share: number;
  readonly afterHours: number | null;
}

export function failingOf({ system, record, startKwh, months }: Walkable): Failing {
  const outageHours = LENGTHS.at(-1)!;
  const starts = sampledStarts(record.solarKw.length, months);
  const counts = new Map<Failure, number>();
  const after: number[] = [];
  const walk = manyWalks(system, record);
  for (const start of starts) {
    const { failure, hoursServed } = walk({ start, outageHours, startKwh });
    if (failure === null) continue;
    counts.set(failure, (counts.get(failure) ?? 0) + 1);
    after.push(hoursServed);
  }
  const [most] = [...counts].sort(([, a], [, b]) => b - a);
  return {
    failure: most?.[0] ?? null,
    share: starts.length === 0 ? 0 : after.length / starts.length,
    afterHours: quantileInPlace(Float64Array.from(after), 0.5),
  };
}

/** The same as it is told of a route. */
export type FailsFirst =
  /** `pipedFuel`: while the gas in the street flows. */
  | { readonly code: 'nothing'; readonly pipedFuel: boolean }
  | {
      readonly code: Failure;
      /** Share of the outages of two weeks that fail, 0 to 1. */
      readonly share: number;
      /** All of them do. */
      readonly all: boolean;
      /** Null: in the first hour. */
      readonly afterHours: number | null;
    };

/** Where all outages fail, the hours are those of the route, so that one thing has one figure. */
export function failsFirst(
  { failure, share, afterHours }: Failing,
  { fuel, lasting }: Pick<Route, 'fuel' | 'lasting'>,
): FailsFirst {
  if (failure === null || afterHours === null)
    return { code: 'nothing', pipedFuel: fuel?.atHand === null };
  const all = share > 0.995;
  const hours = (all ? lasting.hours?.value : undefined) ?? afterHours;
  return { code: failure, share, all, afterHours: afterHours === 0 ? null : hours };
}
