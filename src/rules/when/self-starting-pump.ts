import type { Facts } from '../../home/facts';
import { type Trigger, yes } from '../rule';

/** A pump here starts by itself whenever it wants to. */
export function selfStartingPump(facts: Facts): Trigger | null {
  const pump =
    facts.is('water-source', 'well', 'shallow-pump') ||
    facts.is('sump', 'one', 'one-with-battery') ||
    facts.is('waste', 'septic-pump', 'grinder');
  return pump ? yes('A pump here starts by itself.') : null;
}
