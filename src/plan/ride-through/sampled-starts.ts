import { type Season as Months, seasonHours } from '../../outage/season';

/** For means and first failures one start in 185 (5 x 37) is enough; 185 shares no factor with 24 either. */
export const MEANS_EVERY_HOURS = 185;

/** What a rung of the ladder buys is a mean over few walks, one start in 925 (5 x 5 x 37): each is walked once a rung. */
export const RUNGS_EVERY_HOURS = 925;

/** The sampled start hours of a record that fall in a season. */
export function sampledStarts(
  hours: number,
  months: Months,
  everyHours = MEANS_EVERY_HOURS,
): number[] {
  const { first, count } = seasonHours(months);
  const starts: number[] = [];
  for (let start = 0; start < hours; start += everyHours) {
    if (((start % 8760) - first + 8760) % 8760 < count) starts.push(start);
  }
  return starts;
}
