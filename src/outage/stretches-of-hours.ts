import { HOURS_PER_YEAR } from '../physics/weather/calendar';

/**
 * The hours of a record a year at a time. A loop over all of them in one call runs its first half million hours
 * before the machine has made fast code of it; a loop that is called year by year is fast from its third year on.
 */
export function forEachStretch(hours: number, visit: (from: number, upTo: number) => void): void {
  for (let from = 0; from < hours; from += HOURS_PER_YEAR) {
    visit(from, Math.min(from + HOURS_PER_YEAR, hours));
  }
}
