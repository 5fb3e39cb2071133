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
        ? yes(`You want to manage for ${Math.round(home.goalHours.value)} hours.`)
        : null,
      knownGenerator(home, routes),
    ),
};
