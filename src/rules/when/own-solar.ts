import type { Home } from '../../home/home';
import type { Trigger } from '../rule';
import { said } from './said';

/** Solar panels are on the home already. Not known: careful. */
export function ownSolar(home: Home): Trigger | null {
  return said({
    facts: home.facts,
    id: 'own-sources',
    choices: ['solar'],
    because: 'You have solar panels.',
    unknown: 'We do not know whether the home has solar panels.',
  });
}
