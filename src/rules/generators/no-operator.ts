import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { manualGenerator } from '../when/manual-generator';

/** Nobody can run it. */
export const noOperator: Rule = {
  id: 'no-operator',
  applies: (home, routes) =>
    both(
      home.facts.told('operators') && home.facts.is('operators', 'none')
        ? yes('nobody-start-fuel-generator')
        : null,
      manualGenerator(home, routes),
    ),
};
