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
      because: 'Water has been in the house or the yard.',
      unknown: 'We do not know whether water has been here.',
    }),
    said({
      facts,
      id: 'hazards',
      choices: ['flood', 'hurricane'],
      because: 'You named floods or hurricanes.',
      unknown: 'We do not know whether floods reach you.',
    }),
  );
}
