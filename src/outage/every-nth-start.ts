import { HOURS_PER_YEAR } from '../physics/weather/calendar';
import { type MonthSpan, seasonHours } from './season';

/** Every so manieth hour of a record of `hours` h, of those that fall in a season: a sample of start hours. */
export function everyNthStart(hours: number, season: MonthSpan, every: number): number[] {
  const { first, count } = seasonHours(season);
  const starts: number[] = [];
  for (let start = 0; start < hours; start += every) {
    if (((start % HOURS_PER_YEAR) - first + HOURS_PER_YEAR) % HOURS_PER_YEAR < count)
      starts.push(start);
  }
  return starts;
}
