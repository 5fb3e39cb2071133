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
        ? yes('generator-stood-closer-20')
        : null,
      both(
        said({
          facts: home.facts,
          id: 'engine-place',
          choices: ['open-closer', 'porch-carport', 'garage-shed', 'none'],
          because: 'place-named-not-open',
          unknown: 'not-known-place-20-feet-from',
        }),
        portableGenerator(home, routes),
      ),
    ),
};
