/** The bounds a number must keep. `above` leaves the bound itself out; a missing bound is open. */
export interface Bounds {
  readonly atLeast?: number;
  readonly above?: number;
  readonly atMost?: number;
  readonly unit: string;
}

/**
 * The value itself when it is finite and inside the bounds.
 * Throws RangeError naming value and unit otherwise: a person's answer is checked long before.
 */
export function requireWithin(name: string, value: number, bounds: Bounds): number {
  const { atLeast = -Infinity, above = -Infinity, atMost = Infinity, unit } = bounds;
  if (!Number.isFinite(value)) throw new RangeError(`${name} must be a number: ${value} ${unit}`);
  if (value < atLeast || value > atMost || value <= above) {
    const asked = [
      bounds.atLeast === undefined ? '' : `at least ${bounds.atLeast}`,
      bounds.above === undefined ? '' : `above ${bounds.above}`,
      bounds.atMost === undefined ? '' : `at most ${bounds.atMost}`,
    ];
    const words = asked.filter(Boolean).join(' and ');
    throw new RangeError(`${name} must be ${words} ${unit}: ${value} ${unit}`);
  }
  return value;
}
