import { mustBeShare, mustNotBeNegative } from '../quantity/must-be';

/** Apparent power of one load, VA = W / power factor. */
export function apparentPowerVa(given: { watts: number; powerFactor: number }): number {
  mustNotBeNegative('watts', given.watts, 'W');
  mustBeShare('powerFactor', given.powerFactor);
  return given.watts / given.powerFactor;
}
