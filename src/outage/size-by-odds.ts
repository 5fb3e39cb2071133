import { quantileInPlace } from './quantile';
import { type MonthSpan, seasonHours } from './season';
import { valuesInSeason } from './season-starts';

/**
 * Usable storage, kWh, that rides through `share` of the outages starting in the season, any year:
 * the quantile over every start hour of the season in all years. `needed` as `neededForEveryStart`
 * gives it, one value an hour, whole years. `null` when there are no whole years.
 *
 * Answers "9 such outages in 10". Not to be mixed with `sizeForShareOfYears`.
 */
export function sizeForShareOfOutages(
  needed: Float64Array,
  season: MonthSpan,
  share: number,
): number | null {
  return quantileInPlace(valuesInSeason(season, needed), share);
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
  season: MonthSpan,
  share: number,
): number | null {
  return quantileOfYears(valuesInSeason(season, needed), season, share);
}

/** The same from the needs at the season's start hours alone, year after year, as `valuesInSeason` gives them. */
export function quantileOfYears(
  starts: Float64Array,
  season: MonthSpan,
  share: number,
): number | null {
  const { count } = seasonHours(season);
  const largest = new Float64Array(starts.length / count);
  for (let year = 0; year < largest.length; year++) {
    let most = 0;
    for (let s = year * count; s < (year + 1) * count; s++)
      if (starts[s]! > most) most = starts[s]!;
    largest[year] = most;
  }
  return quantileInPlace(largest, share);
}
