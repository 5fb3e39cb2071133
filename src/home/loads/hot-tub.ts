import type { Facts } from '../facts';

/** A hot tub told of: as a load, or as what could freeze. It is asked once, by whichever comes first. */
export function hasHotTub(facts: Facts): boolean {
  return facts.has('big-loads', 'hot-tub') || facts.has('freeze-risk', 'hot-tub');
}
