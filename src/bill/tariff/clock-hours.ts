import type { BillDay } from './bill-days';
import type { ClockRange, DayKind, TariffPeriod } from './tariff';

/** Whether an hour of the day (0 to 23) lies in one of the ranges; no ranges means the whole day. */
export function inHours(hour: number, ranges: readonly ClockRange[] | undefined): boolean {
  if (ranges === undefined) return true;
  return ranges.some(([from, to]) =>
    from < to ? hour >= from && hour < to : hour >= from || hour < to,
  );
}

/** Whether a period of this kind of day holds on a weekend day (or holiday), or on a weekday. */
export function onDay(weekend: boolean, days: DayKind = 'every'): boolean {
  return days === 'every' || (days === 'weekends') === weekend;
}

/** Whether a day lies in the span of two days of the year, both included, perhaps over New Year. */
export function inSeason(
  day: Pick<BillDay, 'month' | 'dayOfMonth'>,
  season: { from: string; to: string },
): boolean {
  const at = day.month * 100 + day.dayOfMonth;
  const from = monthDay(season.from);
  const to = monthDay(season.to);
  return from <= to ? at >= from && at <= to : at >= from || at <= to;
}

/** MM-DD as month * 100 + day. */
export function monthDay(text: string): number {
  return Number(text.slice(0, 2)) * 100 + Number(text.slice(3, 5));
}

/** Indexes of the periods that claim an hour: named ones first, else those that take all other hours. */
export function periodsAt(
  periods: readonly TariffPeriod[],
  given: { weekend: boolean; hour: number },
): number[] {
  const claims = (wanted: boolean) =>
    periods.flatMap((p, i) =>
      (p.hours !== undefined) === wanted &&
      onDay(given.weekend, p.days) &&
      inHours(given.hour, p.hours)
        ? [i]
        : [],
    );
  const named = claims(true);
  return named.length > 0 ? named : claims(false);
}
