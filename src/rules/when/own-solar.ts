import type { Home } from '../../home/home';
import type { Trigger } from '../rule';
import { said } from './said';

/** Solar panels are on the home already. Not known: careful. */
export function ownSolar(home: Home): Trigger | null {
  return said({
    facts: home.facts,
    id: 'own-sources',
    choices: ['solar'],
    because: 'solar-panels',
    unknown: 'not-known-home-solar-panels',
  });
}
