import { type Season as Months, seasonHours } from '../../outage/season';

/** Start hours walked: one in 185 (5 x 37), which shares no factor with 24, so that every hour of the day comes up. */
export const WALK_EVERY_HOURS = 185;
/** With more than what must run, one in 1,295 (5 x 7 x 37): a rougher answer, to keep a plan quick. */
export const WALK_MORE_EVERY_HOURS = 1295;

/** The sampled start hours of a record that fall in a season. */
export function sampledStarts(hours: number, months: Months): number[] {
  const { first, count } = seasonHours(months);
  const starts: number[] = [];
  for (let start = 0; start < hours; start += WALK_EVERY_HOURS) {
    if (((start % 8760) - first + 8760) % 8760 < count) starts.push(start);
  }
  return starts;
}
