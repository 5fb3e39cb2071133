import type { Facts } from './facts';

/**
 * Told that the place for a battery falls below 32 F, where no lithium battery may be charged. That it never did lifts
 * no caution: in an outage nothing warms it.
 */
export function toldToFreeze(facts: Facts): boolean {
  return facts.told('battery-place-range') && facts.has('battery-place-range', 'below-32');
}

/** Told whether the place rises above 100 F, where a battery wears out fast; null while the weather must stand for it. */
export function toldHot(facts: Facts): boolean | null {
  return facts.told('battery-place-range') ? facts.has('battery-place-range', 'above-100') : null;
}
