import type { FailsFirst } from '../../../plan/ride-through/failing';
import { shown } from '../../../quantity/shown';

const failures: Readonly<Record<Exclude<FailsFirst['code'], 'nothing'>, string>> = {
  'battery-empty': 'the battery runs empty',
  'power-limit': 'the loads together are more than the source gives',
  'fuel-gone': 'the fuel runs out',
  'engine-off': 'the generator is off by its timetable',
  'vehicle-gone': 'the vehicle has given what it may',
  'vehicle-away': 'the vehicle is away from home',
  'no-source': 'nothing feeds it',
};

/** "first, the battery runs empty, after 26 h by the likely count". */
export function sayFailsFirst(failsFirst: FailsFirst): string {
  if (failsFirst.code === 'nothing') {
    return failsFirst.pipedFuel
      ? 'nothing fails within two weeks while the gas flows and the generator is kept in oil'
      : 'nothing fails within two weeks';
  }
  const { code, share, all, afterHours } = failsFirst;
  const when = afterHours === null ? 'in the first hour' : `after ${shown(afterHours, 'h')}`;
  const which = all
    ? 'by the likely count'
    : `in the middle of the ${Math.max(1, Math.round(100 * share))} of 100 outages of two weeks that fail`;
  return `first, ${failures[code]}, ${when} ${which}`;
}
