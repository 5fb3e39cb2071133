import { type MonthSpan as Months, seasonHours } from '../../outage/season';
import { HOURS_PER_YEAR } from '../../physics/weather/calendar';

/** For means and first failures one start in 185 (5 x 37) is enough; 185 shares no factor with 24 either. */
export const MEANS_EVERY_HOURS = 185;

/** The order of switching off is walked in so many of the drawn years: its loads are worked out thing by thing. */
export const LADDER_YEARS = 20;

/** The sampled start hours of a record that fall in a season. */
export function sampledStarts(hours: number, months: Months): number[] {
  const { first, count } = seasonHours(months);
  const starts: number[] = [];
  for (let start = 0; start < hours; start += MEANS_EVERY_HOURS) {
    if (((start % HOURS_PER_YEAR) - first + HOURS_PER_YEAR) % HOURS_PER_YEAR < count)
      starts.push(start);
  }
  return starts;
}
