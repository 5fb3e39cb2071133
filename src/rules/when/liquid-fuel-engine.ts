import type { Home } from '../../home/home';
import type { Routes, Trigger } from '../rule';
import { both } from './both';
import { portableEngine } from './portable-engine';
import { said } from './said';

/** A portable engine that burns gasoline or diesel, or whose fuel we do not know. */
export function liquidFuelEngine(home: Home, routes: Routes): Trigger | null {
  const engine = portableEngine(home, routes);
  if (engine === null || !home.facts.applies('engine-fuel')) return engine;
  return both(
    engine,
    said({
      facts: home.facts,
      id: 'engine-fuel',
      choices: ['gasoline', 'diesel'],
      because: 'The generator burns liquid fuel.',
      unknown: 'We do not know what the generator burns.',
    }),
  );
}
