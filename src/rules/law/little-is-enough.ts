import { type Rule, yes } from '../rule';

/** Outages a year and hours up to which small steps are often all it takes (our judgement). */
const fewAYear = 3;
const shortHours = 8;

/** Few short outages and nobody at risk: spending little is a sound plan. */
export const littleIsEnough: Rule = {
  id: 'little-is-enough',
  applies: ({ facts, lifeSupport }) => {
    const often = facts.told('outage-often') ? facts.number('outage-often') : null;
    const longest = facts.told('outage-longest') ? facts.number('outage-longest') : null;
    const safe =
      lifeSupport === 'no' &&
      facts.told('people-risk') &&
      facts.has('people-risk', 'none') &&
      facts.has('medical-devices', 'none');
    return safe && often !== null && longest !== null && often <= fewAYear && longest <= shortHours
      ? yes({ code: 'few-short-outages', timesAYear: often, longestHours: longest })
      : null;
  },
};
