import type { Facts } from '../facts';

/** Outdoor cold, F, below which a home without heat gets uncomfortable within a day or two (our judgement). */
export const COOL_OUTDOORS_F = 45;

/** A stove with a chimney or a heater with a pipe outside warms one room without power. Not told counts as none. */
export function warmOtherwise(facts: Facts): boolean {
  return facts.told('heat-second') && facts.is('heat-second', 'wood-stove', 'vented-gas');
}
