import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { portableGenerator } from '../when/portable-generator';
import { said } from '../when/said';

/** The only place named is nearer than 20 ft, or there is none, or it stood nearer the last time. */
export const generatorTooClose: Rule = {
  id: 'engine-too-close',
  applies: (home, routes) =>
    firstOf(
      home.facts.told('engine-stood') && home.facts.is('engine-stood', 'open-closer')
        ? yes('Your generator stood closer than 20 feet the last time it ran.')
        : null,
      both(
        said({
          facts: home.facts,
          id: 'engine-place',
          choices: ['open-closer', 'porch-carport', 'garage-shed', 'none'],
          because: 'The place you named is not open ground 20 feet from every opening.',
          unknown: 'We do not know of a place 20 feet from every opening.',
        }),
        portableGenerator(home, routes),
      ),
    ),
};
