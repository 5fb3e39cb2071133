import { HOURS_PER_YEAR } from '../physics/weather/calendar';
import { quantileInPlace } from './quantile';
import { type MonthSpan, seasonHours } from './season';

/**
 * A start hour to draw as the bad case: of the season's start hours, the first whose need is the one
 * that `share` of them do not exceed. With 0.9, one outage in ten is as hard or harder. `null` when the
 * record has no hour of the season.
 */
export function badCaseStart(
  needed: Float64Array,
  season: MonthSpan,
  share = 0.9,
): { start: number; neededKwh: number } | null {
  const { first, count } = seasonHours(season);
  const inSeason = (hour: number) =>
    ((hour % HOURS_PER_YEAR) - first + HOURS_PER_YEAR) % HOURS_PER_YEAR < count;
  // Plain loops: a callback for every hour of a hundred years would cost more than the choice itself.
  const kept = new Float64Array(needed.length);
  let filled = 0;
  for (let hour = 0; hour < needed.length; hour++) {
    if (inSeason(hour)) kept[filled++] = needed[hour]!;
  }
  const neededKwh = quantileInPlace(kept.subarray(0, filled), share);
  if (neededKwh === null) return null;
  let start = 0;
  while (needed[start] !== neededKwh || !inSeason(start)) start++;
  return { start, neededKwh };
}
