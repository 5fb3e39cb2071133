import { HOURS_A_YEAR } from './month-of-hour';
import { quantileInPlace } from './quantile';
import { type Season, seasonHours } from './season';

/**
 * A start hour to draw as the bad case: of the season's start hours, the first whose need is the one
 * that `share` of them do not exceed. With 0.9, one outage in ten is as hard or harder. `null` when the
 * record has no hour of the season.
 */
export function badCaseStart(
  needed: Float64Array,
  season: Season,
  share = 0.9,
): { start: number; neededKwh: number } | null {
  const { first, count } = seasonHours(season);
  const inSeason = (hour: number) => (hour - first + HOURS_A_YEAR) % HOURS_A_YEAR < count;
  const kept = needed.filter((_, hour) => inSeason(hour % HOURS_A_YEAR));
  const neededKwh = quantileInPlace(kept, share);
  if (neededKwh === null) return null;
  const start = needed.findIndex((kwh, hour) => kwh === neededKwh && inSeason(hour % HOURS_A_YEAR));
  return { start, neededKwh };
}
