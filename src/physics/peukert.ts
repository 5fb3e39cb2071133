import { requireWithin } from '../quantity/require-within';

export interface LeadAcidRating {
  readonly ratedAh: number;
  /** Hours of the rating: 20 for "100 Ah at the 20-hour rate". */
  readonly ratedHours: number;
  /** n: 1.05-1.15 absorbed mat, 1.2-1.25 flooded (from memory). */
  readonly exponent: number;
}

/**
 * Hours a lead-acid battery gives a steady current, by Peukert's law on the basis of its rating:
 *   t = R (C / (I R))^n
 * The short form C / I^n holds only when C is the capacity at 1 A, and is not used.
 * Peukert 1897. `null` at no current: it has no end to give.
 */
export function peukertHours(rating: LeadAcidRating, amps: number): number | null {
  const { ratedAh, ratedHours, exponent } = rating;
  requireWithin('ratedAh', ratedAh, { atLeast: 0, unit: 'Ah' });
  requireWithin('ratedHours', ratedHours, { above: 0, unit: 'h' });
  requireWithin('exponent', exponent, { atLeast: 1, atMost: 2, unit: '(exponent)' });
  requireWithin('amps', amps, { atLeast: 0, unit: 'A' });
  return amps === 0 ? null : ratedHours * (ratedAh / (amps * ratedHours)) ** exponent;
}

/**
 * The exponent from a battery's capacity at two rates:
 *   n = ln(R1 / R2) / ln( (C2 / R2) / (C1 / R1) )
 * Throws RangeError when both rates are one current.
 */
export function peukertExponent(
  one: { ah: number; hours: number },
  two: { ah: number; hours: number },
): number {
  for (const rate of [one, two]) {
    requireWithin('ah', rate.ah, { above: 0, unit: 'Ah' });
    requireWithin('hours', rate.hours, { above: 0, unit: 'h' });
  }
  const currents = two.ah / two.hours / (one.ah / one.hours);
  if (currents === 1) throw new RangeError(`two rates must differ: ${one.ah} Ah, ${one.hours} h`);
  return Math.log(one.hours / two.hours) / Math.log(currents);
}
