import { type Rule, yes } from '../rule';

/** Home dialysis needs water as well as power, and a plan of its own. */
export const dialysisPlan: Rule = {
  id: 'dialysis-plan',
  applies: ({ facts }) =>
    facts.told('medical-devices') && facts.has('medical-devices', 'dialysis')
      ? yes('someone-dialysis-home')
      : null,
};
