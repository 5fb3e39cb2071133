import type { Rule } from '../rule';
import { portableGenerator } from '../when/portable-generator';

/** Rain and snow tempt people to cover a generator or bring it closer. */
export const wetWeather: Rule = {
  id: 'wet-weather',
  applies: (home, routes) => portableGenerator(home, routes),
};
