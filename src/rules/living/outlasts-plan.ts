import { type Rule, yes } from '../rule';

/** Outages here have been longer than the plan means to last. */
export const outlastsPlan: Rule = {
  id: 'outlasts-plan',
  applies: ({ facts, goalHours }) => {
    const longest = facts.told('outage-longest') ? facts.number('outage-longest') : null;
    return longest !== null && longest > goalHours.value
      ? yes(
          `Your longest outage was ${longest} h, and the plan is for ${Math.round(goalHours.value)} h.`,
        )
      : null;
  },
};
