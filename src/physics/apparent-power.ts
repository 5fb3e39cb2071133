import { mustBeShare, mustNotBeNegative } from '../quantity/must-be';

/** Apparent power of one load, VA = W / power factor. */
export function apparentPowerVa(of: { watts: number; powerFactor: number }): number {
  mustNotBeNegative('watts', of.watts, 'W');
  mustBeShare('powerFactor', of.powerFactor);
  return of.watts / of.powerFactor;
}
