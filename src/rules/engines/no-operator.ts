import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { manualEngine } from '../when/manual-engine';

/** Nobody can run it. */
export const noOperator: Rule = {
  id: 'no-operator',
  applies: (home, routes) =>
    both(
      home.facts.told('operators') && home.facts.is('operators', 'none')
        ? yes('Nobody here can start and fuel a generator.')
        : null,
      manualEngine(home, routes),
    ),
};
