import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { knownEngine } from '../when/known-engine';

/** Hours from which an outage outlasts one oil check. */
const longHours = 24;

/** Oil in a long run. */
export const engineOil: Rule = {
  id: 'engine-oil',
  applies: (home, routes) =>
    both(
      home.goalHours.value > longHours
        ? yes(`You want to manage for ${Math.round(home.goalHours.value)} hours.`)
        : null,
      knownEngine(home, routes),
    ),
};
