import type { Home } from '../../home/home';
import type { Routes, Trigger } from '../rule';
import { both } from './both';
import { portableGenerator } from './portable-generator';
import { said } from './said';

/** A portable generator that burns gasoline or diesel, or whose fuel we do not know. */
export function liquidFuelGenerator(home: Home, routes: Routes): Trigger | null {
  const generator = portableGenerator(home, routes);
  if (generator === null || !home.facts.applies('engine-fuel')) return generator;
  return both(
    generator,
    said({
      facts: home.facts,
      id: 'engine-fuel',
      choices: ['gasoline', 'diesel'],
      because: 'generator-burns-liquid-fuel',
      unknown: 'not-known-generator-burns',
    }),
  );
}
