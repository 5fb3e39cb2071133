import { requireWithin } from '../quantity/require-within';

/**
 * By how much a stationary lead-acid battery must be larger to give its 25 C capacity at another
 * electrolyte temperature, x = C / 100:
 *   -2.8117 x^3 + 4.1916 x^2 - 2.4941 x + 1.405
 * A polynomial in use for Table 1 of IEEE Std 485, within 0.01 of 1 at 25 C. -4 to 50 C.
 */
export function leadAcidSizeFactor(electrolyteC: number): number {
  requireWithin('electrolyteC', electrolyteC, { atLeast: -4, atMost: 50, unit: 'C' });
  const x = electrolyteC / 100;
  return ((-2.8117 * x + 4.1916) * x - 2.4941) * x + 1.405;
}
