import { HOURS_PER_YEAR } from '../physics/weather/calendar';
import { type MonthSpan, seasonHours } from './season';

/**
 * Calls with each start hour of the season, year by year, of a record of `count` hours. The record is a ring: a
 * season over the turn of the year is one season, the last December goes with the first January.
 */
export function forEachSeasonStart(
  season: MonthSpan,
  count: number,
  call: (start: number, year: number) => void,
): void {
  const { first, count: long } = seasonHours(season);
  const years = Math.floor(count / HOURS_PER_YEAR);
  const ring = years * HOURS_PER_YEAR;
  for (let year = 0; year < years; year++) {
    for (let h = 0, start = year * HOURS_PER_YEAR + first; h < long; h++, start++) {
      call(start < ring ? start : start - ring, year);
    }
  }
}

/** Share of the season's start hours, over all whole years, for which something holds; 0 for a record of less than a year. */
export function shareOfSeason(
  season: MonthSpan,
  count: number,
  holds: (start: number) => boolean,
): number {
  let [yes, all] = [0, 0];
  forEachSeasonStart(season, count, (start) => {
    all += 1;
    if (holds(start)) yes += 1;
  });
  return all === 0 ? 0 : yes / all;
}

/** The values at the season's start hours, all whole years together; `values` holds one for each hour of the record. */
export function valuesInSeason(season: MonthSpan, values: Float64Array): Float64Array {
  const years = Math.floor(values.length / HOURS_PER_YEAR);
  const out = new Float64Array(years * seasonHours(season).count);
  let at = 0;
  forEachSeasonStart(season, values.length, (start) => {
    out[at++] = values[start]!;
  });
  return out;
}
