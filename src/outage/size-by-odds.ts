import { HOURS_A_YEAR } from './month-of-hour';
import { quantileInPlace } from './quantile';
import { type Season, seasonHours } from './season';

/**
 * Usable storage, kWh, that rides through `share` of the outages starting in the season, any year:
 * the quantile over every start hour of the season in all years. `needed` as `neededForEveryStart`
 * gives it, one value an hour, whole years. `null` when there are no whole years.
 *
 * Answers "9 such outages in 10". Not to be mixed with `sizeForShareOfYears`.
 */
export function sizeForShareOfOutages(
  needed: Float64Array,
  season: Season,
  share: number,
): number | null {
  const years = wholeYears(needed);
  const { first, count } = seasonHours(season);
  const all = new Float64Array(years * count);
  let written = 0;
  forSeasonHours(needed, years, first, count, (value) => {
    all[written++] = value;
  });
  return quantileInPlace(all, share);
}

/**
 * Usable storage, kWh, that in `share` of the years rides through whenever in the season the outage
 * starts: the quantile over years of the season's largest need. Never less than the other measure
 * at the same share. `null` when there are no whole years.
 *
 * Answers "9 winters in 10, whenever it starts". A season over the turn of the year is one season;
 * the record's last December goes with its first January.
 */
export function sizeForShareOfYears(
  needed: Float64Array,
  season: Season,
  share: number,
): number | null {
  const years = wholeYears(needed);
  const { first, count } = seasonHours(season);
  const largest = new Float64Array(years);
  forSeasonHours(needed, years, first, count, (value, year) => {
    if (value > largest[year]!) largest[year] = value;
  });
  return quantileInPlace(largest, share);
}

function wholeYears(needed: Float64Array): number {
  return Math.floor(needed.length / HOURS_A_YEAR);
}

function forSeasonHours(
  needed: Float64Array,
  years: number,
  first: number,
  count: number,
  use: (value: number, year: number) => void,
): void {
  const ring = years * HOURS_A_YEAR;
  for (let year = 0; year < years; year++) {
    for (let i = 0, hour = year * HOURS_A_YEAR + first; i < count; i++, hour++) {
      use(needed[hour < ring ? hour : hour - ring]!, year);
    }
  }
}
