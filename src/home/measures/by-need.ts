import { figure } from '../../quantity/figure';
import type { MeasureRow } from '../../tables/measures';
import { type Load, seasons } from '../home';
import type { Change } from './household';
import { changing, shapeOfHours } from './lessen';

/**
 * A device that is on by need has an allotment of energy a day: whoever lives by the gauge shortens its hours when
 * it draws more, so the high end is the likely one, and never more than as usual.
 */
function allotted(load: Load, kwh: { low: number; likely: number }, row: MeasureRow): Load {
  const kwhPerDay = Object.fromEntries(
    seasons.map((season) => {
      const usual = load.kwhPerDay[season];
      const value = Math.min(usual.value, kwh.likely);
      const source = {
        kind: 'table',
        is: { code: 'allotment', measure: row.id },
        cite: row.source,
        from: [usual],
      } as const;
      return [
        season,
        figure({ ...usual, value, low: Math.min(usual.low, kwh.low, value), high: value, source }),
      ];
    }),
  ) as Load['kwhPerDay'];
  return { ...load, kwhPerDay, shape: shapeOfHours(row.hours!) };
}

const hoursOf = (row: MeasureRow) =>
  row.hours!.reduce((sum, [from, until]) => sum + until - from, 0);

/** The internet box is on at set hours. */
export const internetHours: Change = (_, loads, row) =>
  changing(
    loads,
    (load) => load.restsOn.includes('internet-kind'),
    (load) => {
      const { low, value } = load.runningWatts;
      const kwh = (watts: number) => (watts * hoursOf(row)) / 1000;
      return allotted(load, { low: kwh(low), likely: kwh(value) }, row);
    },
  );

/** Phones are filled once a day, while something else is on as well. */
export const phonesOnce: Change = ({ people }, loads, row) =>
  changing(
    loads,
    (load) => load.id === 'phone-charging',
    (load) => {
      const kwh = (row.wattHours! * people.value) / 1000;
      return allotted(load, { low: kwh / 2, likely: kwh }, row);
    },
  );
