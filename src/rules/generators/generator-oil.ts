import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { knownGenerator } from '../when/known-generator';

/** Hours from which an outage outlasts one oil check. */
const longHours = 24;

/** Oil in a long run. */
export const generatorOil: Rule = {
  id: 'engine-oil',
  applies: (home, routes) =>
    both(
      home.goalHours.value > longHours
        ? yes({ code: 'goal-of-hours', hours: Math.round(home.goalHours.value) })
        : null,
      knownGenerator(home, routes),
    ),
};
