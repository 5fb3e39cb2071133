import type { Rule } from '../rule';
import { portableEngine } from '../when/portable-engine';

/** Rain and snow tempt people to cover an engine or bring it closer. */
export const wetWeather: Rule = {
  id: 'wet-weather',
  applies: (home, routes) => portableEngine(home, routes),
};
