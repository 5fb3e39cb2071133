import { breakerAtLeast } from './breaker-sizes';

/** Least rating of the service of a one-family house, A. NEC 230.79(C). */
export const LEAST_HOUSE_AMPS = 100;

/** Smallest standard service for this current in a one-family house, A; null above the table of breakers. */
export function leastHouseService(amps: number): number | null {
  return breakerAtLeast(Math.max(LEAST_HOUSE_AMPS, amps));
}
