import type { Home } from '../../home/home';
import type { Trigger } from '../rule';
import { firstOf } from './first-of';
import { lifeDevice } from './life-device';
import { said } from './said';

/** Someone here is made ill sooner than others by a cold room or a hot one. Not known: careful. */
export function atRisk(home: Home, by: 'heat' | 'cold'): Trigger | null {
  const { facts } = home;
  return firstOf(
    said({
      facts,
      id: 'heat-cold',
      choices: [by, 'both'],
      because: { code: 'told-ill-from', by },
      unknown: { code: 'not-known-ill-from', by },
    }),
    said({
      facts,
      id: 'people-risk',
      choices: ['baby', 'over-65', 'pregnant', 'long-illness'],
      because: { code: 'more-risk-from', by },
      unknown: { code: 'not-known-more-risk-from', by },
    }),
    lifeDevice(home),
  );
}
