import { weekdayOf } from './bill-days';

const nth = (year: number, month: number, weekday: number, n: number): number => {
  const first = 1 + ((weekday - weekdayOf({ year, month, dayOfMonth: 1 }) + 7) % 7);
  return first + 7 * (n - 1);
};

const lastMonday = (year: number, month: number): number => {
  const fifth = nth(year, month, 1, 5);
  return fifth <= 31 ? fifth : fifth - 7;
};

/** Holidays a tariff may name, and the day each falls on in a year. Dates of 5 USC 6103(a). */
export const usHolidays: Readonly<Record<string, (year: number) => [number, number]>> = {
  'new-year': () => [1, 1],
  'presidents-day': (y) => [2, nth(y, 2, 1, 3)],
  'memorial-day': (y) => [5, lastMonday(y, 5)],
  'independence-day': () => [7, 4],
  'labor-day': (y) => [9, nth(y, 9, 1, 1)],
  'veterans-day': () => [11, 11],
  thanksgiving: (y) => [11, nth(y, 11, 4, 4)],
  christmas: () => [12, 25],
};

/** The holidays a tariff names, as month * 100 + day of the month. Throws RangeError for a name not known. */
export function holidaysOf(names: readonly string[], year: number): ReadonlySet<number> {
  return new Set(
    names.map((name) => {
      const written = /^(\d\d)-(\d\d)$/.exec(name);
      if (written) return Number(written[1]) * 100 + Number(written[2]);
      const fall = usHolidays[name];
      if (!fall) throw new RangeError(`holiday "${name}" is not known`);
      const [month, dayOfMonth] = fall(year);
      return month * 100 + dayOfMonth;
    }),
  );
}
