import { type Rule, yes } from '../rule';

/** A grill or camp stove outdoors, which rain tempts people to bring in. */
export const outdoorCooking: Rule = {
  id: 'outdoor-cooking',
  applies: ({ facts }) =>
    facts.told('cook-without') && facts.has('cook-without', 'outdoor-grill', 'camp-stove')
      ? yes('cook-grill-camp-stove')
      : null,
};
