import { mustBePositive } from '../quantity/must-be';

const CONTINUOUS = 1.25;

/**
 * Largest set point of a load limiter on a service or feeder, A: rating / 1.25, for the set point counts as a
 * continuous load; the whole rating only for equipment listed for 100 %. Source: NEC 2023 220.70 and 750.30.
 */
export function largestSetPointAmps(given: {
  ratingAmps: number;
  hundredPercentRated: boolean;
}): number {
  mustBePositive('ratingAmps', given.ratingAmps, 'A');
  return given.hundredPercentRated ? given.ratingAmps : given.ratingAmps / CONTINUOUS;
}

/** Least service or feeder rating for a set point, A: 1.25 x set point. Source: NEC 2023 220.70. */
export function ratingForSetPointAmps(setPointAmps: number): number {
  mustBePositive('setPointAmps', setPointAmps, 'A');
  return CONTINUOUS * setPointAmps;
}
