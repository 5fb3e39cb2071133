import type { Rule } from '../rule';
import { floods } from '../when/floods';

/** Rising water or a hurricane order: go, powered house or not. */
export const floodGo: Rule = {
  id: 'flood-go',
  applies: ({ facts }) => floods(facts),
};
