import { mustBeShare, mustNotBeNegative } from '../quantity/must-be';

/** Apparent power of one load, VA = W / power factor. */
export function apparentPowerVa(of: { watts: number; powerFactor: number }): number {
  mustNotBeNegative('watts', of.watts, 'W');
  mustBeShare('powerFactor', of.powerFactor);
  return of.watts / of.powerFactor;
}

/**
 * Apparent power of several loads together: VA = sqrt((sum W)^2 + (sum var)^2), var = W tan(acos pf), all lagging.
 * Never more than the plain sum of their VA. An empty list gives 0.
 */
export function combinedApparentPowerVa(
  loads: readonly { watts: number; powerFactor: number }[],
): number {
  let watts = 0;
  let vars = 0;
  for (const load of loads) {
    const va = apparentPowerVa(load);
    watts += load.watts;
    vars += Math.sqrt(Math.max(0, va * va - load.watts * load.watts));
  }
  return Math.hypot(watts, vars);
}
