/** A likely value with its range, unit told by the name that holds it: `low <= likely <= high`. */
export interface Spread {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** Every part times `factor` (0 or more, so the order holds). */
export function scaleSpread(spread: Spread, factor: number): Spread {
  return { low: spread.low * factor, likely: spread.likely * factor, high: spread.high * factor };
}
