/**
 * Share of the normal law below `x` standard deviations, 0 to 1, within 7.5e-8.
 * Source: Abramowitz & Stegun 1964, Handbook of Mathematical Functions, 26.2.17.
 */
export function normalShare(x: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(x));
  const tail =
    0.3989422804014327 *
    Math.exp((-x * x) / 2) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return x >= 0 ? 1 - tail : tail;
}
