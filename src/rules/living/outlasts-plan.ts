import { careful, type Rule, yes } from '../rule';

/** Outages here have been longer than the plan means to last, or we do not know. */
export const outlastsPlan: Rule = {
  id: 'outlasts-plan',
  applies: ({ facts, goalHours }) => {
    const longest = facts.told('outage-longest') ? facts.number('outage-longest') : null;
    if (longest === null) {
      return facts.open('outage-longest')
        ? careful('not-known-long-outage-last', 'outage-longest')
        : null;
    }
    const goal = Math.round(goalHours.value);
    return longest > goalHours.value
      ? yes({ code: 'longest-over-goal', longestHours: longest, goalHours: goal })
      : null;
  },
};
