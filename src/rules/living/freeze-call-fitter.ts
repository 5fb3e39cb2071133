import { type Rule, yes } from '../rule';

/** Sprinklers, boilers and ground loops are not drained by the household. */
export const freezeCallFitter: Rule = {
  id: 'freeze-call-fitter',
  applies: ({ facts, site }) => {
    const loop =
      (facts.told('freeze-risk') && facts.has('freeze-risk', 'sprinkler', 'boiler-loop')) ||
      (facts.told('heat-main') && facts.is('heat-main', 'boiler'));
    return loop && site.coldF <= 32 ? yes('boiler-fire-sprinkler-loop') : null;
  },
};
