import type { Odds } from '../../advice/ride/odds';
import type { Season } from '../../home/home';
import { HOURS_IN_MONTH } from '../../outage/month-of-hour';
import { oddsFromFull, type RideThroughOdds } from '../../outage/ride-through-odds';
import { seasonMonths } from '../../outage/season';
import { monthsOf } from '../../routes/battery-hours';

/** Odds of every length from the hours survived from every start hour: counted, not sampled. */
export function passedOdds(
  survivedHours: Float64Array,
  lengths: readonly number[],
  season: Season,
): Odds[] {
  return plainOdds(oddsFromFull(survivedHours, lengths), season);
}

/** Counted odds as a plan shows them. */
export function plainOdds(counted: readonly RideThroughOdds[], season: Season): Odds[] {
  return counted.map(({ hours, all, months }) => ({
    hours,
    year: all ?? 0,
    months,
    season: ofSeason(months, season),
    standardError: null,
  }));
}

/** A record is whole years, so each month weighs as its hours do. */
function ofSeason(months: readonly (number | null)[], season: Season): number {
  let [yes, all] = [0, 0];
  for (const month of seasonMonths(monthsOf[season])) {
    yes += (months[month] ?? 0) * HOURS_IN_MONTH[month]!;
    all += HOURS_IN_MONTH[month]!;
  }
  return yes / all;
}
