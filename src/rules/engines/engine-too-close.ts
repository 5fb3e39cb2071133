import type { Rule } from '../rule';
import { both } from '../when/both';
import { portableEngine } from '../when/portable-engine';
import { said } from '../when/said';

/** The only place named is nearer than 20 ft, or there is none: no portable engine here. */
export const engineTooClose: Rule = {
  id: 'engine-too-close',
  applies: (home, routes) =>
    both(
      said({
        facts: home.facts,
        id: 'engine-place',
        choices: ['open-closer', 'porch-carport', 'garage-shed', 'none'],
        because: 'The place you named is not open ground 20 feet from every opening.',
        unknown: 'We do not know of a place 20 feet from every opening.',
      }),
      portableEngine(home, routes),
    ),
};
