/** A law of daily clearness around one monthly mean. Clearness is a share of the sun outside the air. */
export interface ClearnessLaw {
  mean: number;
  /** Standard deviation. */
  spread: number;
  min: number;
  max: number;
  /** Growth of the density, per unit of clearness: negative where dark days are the commonest. */
  gamma: number;
}

/** Below this mean the published upper bound turns down again, so it is held at its value here. */
const LOWEST_FITTED_MEAN = 0.15;

/**
 * How daily clearness scatters about a monthly mean: a density that grows as exp(gamma k) between
 * two bounds. The published fit of gamma misses the mean by up to 0.002, so gamma is solved here to
 * make the mean exact. Null when the mean leaves no room for scatter (0, or near the upper bound).
 *
 *     F(k) = [e^(g kmin) - e^(g k)] / [e^(g kmin) - e^(g kmax)]
 *     kmin = 0.05      kmax = 0.6313 + 0.267 K - 11.9 (K - 0.75)^8
 *
 * Source: Bendt, Collares-Pereira & Rabl 1981, Solar Energy 27, 1-5; kmax by Hollands & Huget 1983
 * (Duffie & Beckman, 4th ed., 2.9.4-2.9.7).
 */
export function bendtLaw(mean: number): ClearnessLaw | null {
  const fitted = Math.max(mean, LOWEST_FITTED_MEAN);
  const max = 0.6313 + 0.267 * fitted - 11.9 * (fitted - 0.75) ** 8;
  // Dark months of the far north have means near the published floor; the floor then sinks with them.
  const min = Math.min(0.05, mean / 3);
  const span = max - min;
  if (!(mean > 0.01) || max - mean < 0.03 * span) return null;
  const x = solveGrowth((mean - min) / span);
  return { mean, spread: span * unitSpread(x), min, max, gamma: x / span };
}

/** Clearness that the share `below` (0 to 1) of days stays under. */
export function clearnessAt(law: ClearnessLaw, below: number): number {
  const span = law.max - law.min;
  const x = law.gamma * span;
  if (Math.abs(x) < 1e-6) return law.min + span * below;
  if (x > 0) return law.max + Math.log(below + (1 - below) * Math.exp(-x)) / law.gamma;
  return law.min + Math.log1p(below * Math.expm1(x)) / law.gamma;
}

/** Mean, on a unit span, of the density that grows as exp(x u). */
function unitMean(x: number): number {
  if (Math.abs(x) < 1e-3) return 0.5 + x / 12;
  return 1 + 1 / Math.expm1(x) - 1 / x;
}

function unitSpread(x: number): number {
  if (Math.abs(x) < 1e-2) return Math.sqrt(1 / 12 - (x * x) / 240);
  return Math.sqrt(1 / (x * x) - 1 / (4 * Math.sinh(x / 2) ** 2));
}

/** The growth whose mean on a unit span is `target`, by halving: the mean rises with the growth. */
function solveGrowth(target: number): number {
  let low = -200;
  let high = 200;
  for (let i = 0; i < 60; i++) {
    const mid = (low + high) / 2;
    if (unitMean(mid) < target) low = mid;
    else high = mid;
  }
  return (low + high) / 2;
}
