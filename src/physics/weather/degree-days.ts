import { normalShare } from './normal-share';

/** A day as it falls over the years: its usual mean temperature, and how far single years stray from it. */
export interface UsualDay {
  readonly meanC: number;
  /** Standard deviation of the day's mean, K; at least 0. */
  readonly strayK: number;
}

/**
 * Heating degrees to expect of a day below a base temperature, K; at least 0.
 *
 *   H = (base - mean) Phi(z) + s phi(z),   z = (base - mean) / s,   Phi and phi the normal law and its density
 *
 * Source: Schoenau & Kehrig 1990, Energy and Buildings 14, 299-302, the form from memory; a month is the sum of its days.
 */
export function heatingDegrees({ meanC, strayK }: UsualDay, baseC: number): number {
  const below = baseC - meanC;
  if (!(strayK > 0)) return Math.max(0, below);
  const z = below / strayK;
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  return Math.max(0, below * normalShare(z) + strayK * density);
}

/** Cooling degrees to expect of a day above a base temperature, K: C = H - (base - mean). */
export function coolingDegrees(day: UsualDay, baseC: number): number {
  return Math.max(0, heatingDegrees(day, baseC) - (baseC - day.meanC));
}
