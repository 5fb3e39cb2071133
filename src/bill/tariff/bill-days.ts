/** One day of a bill. `weekend` is left to the tariff, which may count holidays. */
export interface BillDay {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  readonly dayOfMonth: number;
  /** 0 is Sunday. */
  readonly weekday: number;
}

const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Day of the week by the Gregorian calendar, 0 is Sunday. */
export function weekdayOf(date: { year: number; month: number; dayOfMonth: number }): number {
  return new Date(Date.UTC(date.year, date.month - 1, date.dayOfMonth)).getUTCDay();
}

/**
 * The 365 days of a year in order. 29 February is left out, because weather years and load years have 8,760
 * hours; weekdays stay true to the calendar.
 */
export function yearDays(year: number): readonly BillDay[] {
  const known = years.get(year);
  if (known !== undefined) return known;
  const days = lengths.flatMap((_, m) => monthDays(year, m + 1));
  years.set(year, days);
  return days;
}

/** A household's tariffs are looked at on the days of one year or two, many times. */
const years = new Map<number, readonly BillDay[]>();

/** The days of one month of a year, without 29 February. `month` 1 to 12. */
export function monthDays(year: number, month: number): BillDay[] {
  const length = lengths[month - 1];
  if (length === undefined) throw new RangeError(`month ${month} is not 1 to 12`);
  return Array.from({ length }, (_, i) => {
    const dayOfMonth = i + 1;
    return { year, month, dayOfMonth, weekday: weekdayOf({ year, month, dayOfMonth }) };
  });
}

/** The days from one date to another, both counted, 29 February too; null where one is no date or the end is first. */
export function daysBetween(from: string, to: string): BillDay[] | null {
  const [first, last] = [dateOf(from), dateOf(to)];
  if (first === null || last === null || last < first) return null;
  const count = Math.round((last - first) / MS_A_DAY) + 1;
  return Array.from({ length: count }, (_, i) => {
    const date = new Date(first + i * MS_A_DAY);
    return {
      year: date.getUTCFullYear(),
      month: date.getUTCMonth() + 1,
      dayOfMonth: date.getUTCDate(),
      weekday: date.getUTCDay(),
    };
  });
}

const MS_A_DAY = 86_400_000;

function dateOf(text: string): number | null {
  const [year, month, day] = text.split('-').map(Number);
  const time = Date.UTC(year!, month! - 1, day!);
  return new Date(time).toISOString().startsWith(text) ? time : null;
}
