import { HOURS_PER_YEAR } from '../physics/weather/calendar';
import type { HourSeries } from '../quantity/hour-series';
import { type MonthSpan, seasonHours } from './season';

/**
 * The hours that outages starting in a season may meet, and no others: of each whole year its season and so many hours
 * after it, piece after piece. A pass over the pieces tells the season's starts what a pass over the whole record does,
 * in a quarter of the time; what it tells the hours after the season is of no use.
 */
export interface SeasonPieces {
  readonly season: MonthSpan;
  /** Hours after the season's last start: the longest outage looked at. */
  readonly tailHours: number;
}

/** Those hours of a record of every hour; it is a ring of whole years. */
export function cutToPieces({ season, tailHours }: SeasonPieces, hourly: HourSeries): Float64Array {
  const { first, count } = seasonHours(season);
  const years = Math.floor(hourly.length / HOURS_PER_YEAR);
  const ring = hourly.subarray(0, years * HOURS_PER_YEAR);
  const long = count + tailHours;
  const out = new Float64Array(years * long);
  for (let year = 0; year < years; year++) {
    for (let done = 0; done < long; ) {
      const from = (year * HOURS_PER_YEAR + first + done) % ring.length;
      const part = ring.subarray(from, from + long - done);
      out.set(part, year * long + done);
      done += part.length;
    }
  }
  return out;
}

/** Of values for every hour of the pieces those at the season's start hours, year after year, as `valuesInSeason` gives them. */
export function startsOfPieces(
  { season, tailHours }: SeasonPieces,
  values: Float64Array,
): Float64Array {
  const { count } = seasonHours(season);
  const long = count + tailHours;
  const years = values.length / long;
  const out = new Float64Array(years * count);
  for (let year = 0; year < years; year++) {
    out.set(values.subarray(year * long, year * long + count), year * count);
  }
  return out;
}
