import { everyNthStart } from '../../outage/every-nth-start';
import type { MonthSpan as Months } from '../../outage/season';

/** For means and first failures one start in 185 (5 x 37) is enough; 185 shares no factor with 24 either. */
export const MEANS_EVERY_HOURS = 185;

/** The order of switching off is walked in so many of the drawn years: its loads are worked out thing by thing. */
export const LADDER_YEARS = 20;

/** The sampled start hours of a record that fall in a season. */
export const sampledStarts = (hours: number, months: Months): number[] =>
  everyNthStart(hours, months, MEANS_EVERY_HOURS);
