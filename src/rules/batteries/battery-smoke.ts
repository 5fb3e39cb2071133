import { type Rule, yes } from '../rule';
import { anyBattery } from '../when/any-battery';
import { firstOf } from '../when/first-of';

/** A battery that smokes, hisses, swells or is hot. */
export const batterySmoke: Rule = {
  id: 'battery-smoke',
  applies: (home, routes) =>
    firstOf(
      home.facts.has('now-danger', 'battery-smoke') ? yes('told-battery-smokes-hot') : null,
      anyBattery(home, routes),
    ),
};
