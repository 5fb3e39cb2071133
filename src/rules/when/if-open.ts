import type { Facts } from '../../home/facts';
import { careful, type Trigger } from '../rule';

/** Careful when the question applies to this home and its answer is not known. */
export function ifOpen(facts: Facts, id: string, because: string): Trigger | null {
  return facts.open(id) ? careful(because, id) : null;
}
