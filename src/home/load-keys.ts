import type { Facts } from './facts';
import type { Rank } from './home';

/** What the household ranks: one key may stand for several loads ("heat", "work"). */
export type LoadKey =
  | 'heat'
  | 'cool'
  | 'well'
  | 'waste'
  | 'sump'
  | 'fridge'
  | 'freezer'
  | 'lights'
  | 'internet'
  | 'phones'
  | 'work'
  | 'water-heater'
  | 'cooking'
  | 'garage-door'
  | 'aquarium'
  | 'radon-fan'
  | 'heat-tape'
  | 'pool';

/** Rank of a load by its keys: the best rank any of them was given. No key: it can wait. */
export function rankOf(facts: Facts, keys: readonly LoadKey[]): Rank {
  if (keys.some((key) => facts.has('must-run', key))) return 'must';
  if (keys.some((key) => facts.has('nice-run', key))) return 'good';
  return 'wait';
}
