import type { HourSeries } from '../quantity/hour-series';
import { NEGLIGIBLE_KWH } from './every-start';
import type { WalkGenerator } from './walk/system';

/**
 * Outages of one length on a generator alone, by its timetable, without refills: an hour that wants more than it gives, that wants
 * something while it stands still, or for which the fuel does not suffice, ends the outage.
 * @returns whole hours served in each
 * @param loadKw what is wanted in the outages' hours, one outage after the other
 * @param starts hour of the record in which each begins; the record begins at midnight
 */
export function hoursOnGenerator(
  { loadKw, starts }: { loadKw: HourSeries; starts: readonly number[] },
  hours: number,
  { ratedKw, fuelLine: { noLoadPerHour, perKwh }, fuelAtStart, runsByHour }: WalkGenerator,
): Float64Array {
  const served = new Float64Array(starts.length);
  const enough = fuelAtStart + perKwh * NEGLIGIBLE_KWH;
  for (let i = 0; i < served.length; i++) {
    let burned = 0;
    let h = 0;
    let hourOfDay = starts[i]! % 24;
    for (let at = i * hours; h < hours; h++, at++) {
      const wanted = loadKw[at]!;
      const givesKw = runsByHour[hourOfDay] === 0 ? 0 : ratedKw;
      if (givesKw > 0) burned += noLoadPerHour + perKwh * Math.min(givesKw, wanted);
      if (wanted > givesKw + NEGLIGIBLE_KWH || (burned > enough && wanted > NEGLIGIBLE_KWH)) {
        break;
      }
      hourOfDay = hourOfDay === 23 ? 0 : hourOfDay + 1;
    }
    served[i] = h;
  }
  return served;
}
