import { RAD_PER_DEG, wrapDeg } from '../angle';

/** Where the sun stands in the sky of the stars, the same for every place on earth. */
export interface Almanac {
  declinationDeg: number;
  rightAscensionDeg: number;
  /** Sidereal time at Greenwich as an angle, [0, 360). */
  greenwichSiderealDeg: number;
  /** Solar time less mean time at the same meridian, minutes. */
  equationOfTimeMin: number;
  /** Distance between earth and sun, astronomical units. */
  distanceAu: number;
}

/**
 * The sun's declination, right ascension and distance by the low-precision almanac, good to
 * 0.01 degree from 1950 to 2050.
 *
 *     L = 280.460 + 0.9856474 d        g = 357.528 + 0.9856003 d
 *     lambda = L + 1.915 sin g + 0.020 sin 2g      eps = 23.439 - 0.0000004 d
 *
 * `unixSeconds` counts from 1970-01-01 UTC. Source: Michalsky 1988, Solar Energy 40(3), 227-235;
 * distance from the same low-precision formulas of the Astronomical Almanac.
 */
export function almanac(unixSeconds: number): Almanac {
  const julianDay = unixSeconds / 86_400 + 2_440_587.5;
  const d = julianDay - 2_451_545;
  const meanLongitude = 280.46 + 0.9856474 * d;
  const g = (357.528 + 0.9856003 * d) * RAD_PER_DEG;
  const lambda = (meanLongitude + 1.915 * Math.sin(g) + 0.02 * Math.sin(2 * g)) * RAD_PER_DEG;
  const eps = (23.439 - 4e-7 * d) * RAD_PER_DEG;
  const rightAscensionDeg =
    Math.atan2(Math.cos(eps) * Math.sin(lambda), Math.cos(lambda)) / RAD_PER_DEG;
  const utHours = (unixSeconds / 3600) % 24;
  const siderealHours = 6.697375 + 0.0657098242 * d + utHours;
  return {
    declinationDeg: Math.asin(Math.sin(eps) * Math.sin(lambda)) / RAD_PER_DEG,
    rightAscensionDeg,
    greenwichSiderealDeg: (((15 * siderealHours) % 360) + 360) % 360,
    equationOfTimeMin: 4 * wrapDeg(meanLongitude - rightAscensionDeg),
    distanceAu: 1.00014 - 0.01671 * Math.cos(g) - 0.00014 * Math.cos(2 * g),
  };
}
