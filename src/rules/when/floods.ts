import type { Facts } from '../../home/facts';
import type { Trigger } from '../rule';
import { firstOf } from './first-of';
import { said } from './said';

/** Water has been here, or the household fears it. Not known: careful. */
export function floods(facts: Facts): Trigger | null {
  return firstOf(
    said({
      facts,
      id: 'flood-history',
      choices: ['inside', 'yard'],
      because: 'water-house-yard',
      unknown: 'not-known-water',
    }),
    feared(facts),
  );
}

/** A flood or a hurricane among the hazards named. */
export function feared(facts: Facts): Trigger | null {
  return said({
    facts,
    id: 'hazards',
    choices: ['flood', 'hurricane'],
    because: 'named-floods-hurricanes',
    unknown: 'not-known-floods-reach',
  });
}
