import type { HourSeries } from '../quantity/hour-series';
import { NEGLIGIBLE_KWH } from './every-start';
import type { WalkGenerator } from './walk/system';

/**
 * Outages of one length on a generator alone that runs all day, without refills: an hour that wants more than it gives,
 * or for which the fuel does not suffice, ends the outage.
 * @returns whole hours served in each
 * @param loadKw what is wanted in the outages' hours, one outage after the other
 */
export function hoursOnGenerator(
  loadKw: HourSeries,
  hours: number,
  { ratedKw, fuelLine: { noLoadPerHour, perKwh }, fuelAtStart }: WalkGenerator,
): Float64Array {
  const served = new Float64Array(loadKw.length / hours);
  const enough = fuelAtStart + perKwh * NEGLIGIBLE_KWH;
  for (let i = 0; i < served.length; i++) {
    let burned = 0;
    let h = 0;
    for (let at = i * hours; h < hours; h++, at++) {
      const wanted = loadKw[at]!;
      burned += noLoadPerHour + perKwh * Math.min(ratedKw, wanted);
      if (wanted > ratedKw + NEGLIGIBLE_KWH || (burned > enough && wanted > NEGLIGIBLE_KWH)) {
        break;
      }
    }
    served[i] = h;
  }
  return served;
}
