import { HOURS_PER_YEAR } from '../physics/weather/calendar';
import { MONTH_STARTS } from './month-of-hour';

/** Some months in a row, which may run over the turn of the year: winter is { firstMonth: 11, months: 3 }. */
export interface MonthSpan {
  /** 0 January .. 11 December. */
  readonly firstMonth: number;
  /** 1..12 */
  readonly months: number;
}

export const WHOLE_YEAR: MonthSpan = { firstMonth: 0, months: 12 };

/**
 * The start hours of one year's season: first hour, counted from that year's 1 January, and how many.
 * Throws RangeError for a month that is none.
 */
export function seasonHours(season: MonthSpan): { first: number; count: number } {
  const { firstMonth, months } = season;
  if (!Number.isInteger(firstMonth) || firstMonth < 0 || firstMonth > 11) {
    throw new RangeError(`firstMonth must be 0 to 11: ${firstMonth}`);
  }
  if (!Number.isInteger(months) || months < 1 || months > 12) {
    throw new RangeError(`a season must have 1 to 12 months: ${months}`);
  }
  const last = firstMonth + months;
  const end = last <= 12 ? MONTH_STARTS[last]! : HOURS_PER_YEAR + MONTH_STARTS[last - 12]!;
  return { first: MONTH_STARTS[firstMonth]!, count: end - MONTH_STARTS[firstMonth]! };
}

/** The months of a season in order, 0 January .. 11 December. */
export function seasonMonths({ firstMonth, months }: MonthSpan): number[] {
  return Array.from({ length: months }, (_, i) => (firstMonth + i) % 12);
}
