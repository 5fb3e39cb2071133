/**
 * Chance that a standard normal number exceeds z.
 *   Q(z) = erfc(z / sqrt 2) / 2, erf by Abramowitz & Stegun 1964, formula 7.1.26 (error under 1.5e-7)
 */
export function normalTail(z: number): number {
  if (Number.isNaN(z)) throw new RangeError('z must be a number: NaN');
  if (z < 0) return 1 - normalTail(-z);
  const x = z / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const sum =
    t *
    (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  return (sum * Math.exp(-x * x)) / 2;
}
