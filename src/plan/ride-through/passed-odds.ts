import type { Season } from '../../home/home';
import { oddsFromFull } from '../../outage/ride-through-odds';
import { shareOfSeason } from '../../outage/season-starts';
import { monthsOf } from '../../routes/battery-hours';
import type { Odds } from './ride-through';

/** Odds of every length from the hours survived from every start hour: counted, not sampled. */
export function passedOdds(
  survivedHours: Float64Array,
  lengths: readonly number[],
  season: Season,
): Odds[] {
  return oddsFromFull(survivedHours, lengths).map(({ hours, all, months }) => ({
    hours,
    year: all ?? 0,
    months,
    season: shareOfSeason(
      monthsOf[season],
      survivedHours.length,
      (s) => survivedHours[s]! >= hours,
    ),
    standardError: null,
  }));
}
