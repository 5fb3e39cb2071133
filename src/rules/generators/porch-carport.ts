import { careful, type Rule, yes } from '../rule';
import { both } from '../when/both';
import { engineVehicle } from '../when/engine-vehicle';
import { firstOf } from '../when/first-of';
import { portableGenerator } from '../when/portable-generator';
import { said } from '../when/said';

/** A covered or half-closed place counts as indoors. Silent once an open place 20 ft off is named, unless it stood under a roof the last time, or nobody told where it stood. */
export const porchCarport: Rule = {
  id: 'porch-carport',
  applies: (home, routes) => {
    const generator = firstOf(portableGenerator(home, routes), engineVehicle(home, routes));
    const { facts } = home;
    const place = facts.applies('engine-place')
      ? said({
          facts,
          id: 'engine-place',
          choices: ['porch-carport', 'garage-shed'],
          because: 'named-covered-place-generator',
          unknown: 'not-known-generator-stand',
        })
      : yes('there-no-open-ground');
    const unplaced = facts.open('engine-place') ? generator : null;
    const running = facts.has('now-danger', 'engine-near')
      ? yes('generator-runs-covered-place')
      : null;
    const stood =
      facts.told('engine-stood') && facts.is('engine-stood', 'porch-carport', 'garage-shed')
        ? yes('generator-stood-covered-place')
        : null;
    const notTold = facts.open('engine-stood')
      ? careful('not-known-generator-stood', 'engine-stood')
      : null;
    return firstOf(running, stood, both(place, generator), unplaced, notTold);
  },
};
