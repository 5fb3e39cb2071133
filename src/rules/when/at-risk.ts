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
      because: `You told us ${by} makes someone here ill.`,
      unknown: `We do not know whether ${by} makes someone here ill.`,
    }),
    said({
      facts,
      id: 'people-risk',
      choices: ['baby', 'over-65', 'pregnant', 'long-illness'],
      because: `Someone here is at more risk from ${by}.`,
      unknown: `We do not know whether someone here is at more risk from ${by}.`,
    }),
    lifeDevice(home),
  );
}
