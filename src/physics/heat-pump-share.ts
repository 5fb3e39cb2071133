/** Coefficients of a heat-pump curve in indoor and outdoor temperature, F. */
export interface HeatPumpCoefficients {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

/** Both temperatures of the usual heating rating, F (AHRI 210/240). */
const RATED = { indoorF: 70, outdoorF: 47 };

/**
 * A published curve of capacity, or of power input per unit of heat, at 70 F indoors, as a function of the outdoor
 * temperature in C; 1 at the 47 F rating.
 *
 *   share(o) = g(70, o) / g(70, 47),   g(i, o) = a + b i + c i^2 + d o + e o^2 + f i o
 *
 * Fitted to makers' tables; in colder hours than those the same curve goes on. Source of form and coefficients:
 * Cutler et al. 2013, NREL/TP-5500-56354.
 */
export function heatPumpShare(given: HeatPumpCoefficients): (outdoorC: number) => number {
  const i = RATED.indoorF;
  const constant = given.a + given.b * i + given.c * i ** 2;
  const slope = given.d + given.f * i;
  const at = (outdoorF: number) => constant + outdoorF * (slope + given.e * outdoorF);
  const rated = at(RATED.outdoorF);
  return (outdoorC) => at(outdoorC * 1.8 + 32) / rated;
}
