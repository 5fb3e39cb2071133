import { type Rule, yes } from '../rule';

/** Solar said to run the house with no battery: test it; until then it does not. */
export const solarClaim: Rule = {
  id: 'solar-claim',
  applies: ({ facts }) =>
    facts.is('solar-in-outage', 'runs-house') && !facts.has('own-sources', 'home-battery')
      ? yes('told-solar-runs-house-outage')
      : null,
};
