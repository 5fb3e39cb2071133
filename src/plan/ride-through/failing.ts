import { sampledStarts } from '../../advice/ride/sampled-starts';
import type { Walkable } from '../../advice/ride/walkable';
import { quantileInPlace } from '../../outage/quantile';
import type { Failure } from '../../outage/walk/failure';
import { manyWalks } from '../../outage/walk/many-walks';
import { formatQuantity } from '../../quantity/format-quantity';
import type { Route } from '../../routes/route';
import { LENGTHS } from './lengths';

const words: Readonly<Record<Failure, string>> = {
  'battery-empty': 'the battery runs empty',
  'power-limit': 'the loads together are more than the source gives',
  'fuel-gone': 'the fuel runs out',
  'engine-off': 'the generator is off by its timetable',
  'vehicle-gone': 'the vehicle has given what it may',
  'vehicle-away': 'the vehicle is away from home',
  'no-source': 'nothing feeds it',
};

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

/**
 * "first, the battery runs empty, after 26 h by the likely count": where all fail, the hours are those of the route, so
 * that one thing has one figure.
 */
export function sayFailing(
  { failure, share, afterHours }: Failing,
  { fuel, lasting }: Pick<Route, 'fuel' | 'lasting'>,
): string {
  if (failure === null || afterHours === null) {
    return fuel?.atHand === null
      ? 'nothing fails within two weeks while the gas flows and the generator is kept in oil'
      : 'nothing fails within two weeks';
  }
  const all = share > 0.995;
  const hours = Math.round((all ? lasting.hours?.value : undefined) ?? afterHours);
  const when = afterHours === 0 ? 'in the first hour' : `after ${formatQuantity(hours, 'h')}`;
  const of = all
    ? 'by the likely count'
    : `in the middle of the ${Math.max(1, Math.round(100 * share))} of 100 outages of two weeks that fail`;
  return `first, ${words[failure]}, ${when} ${of}`;
}
