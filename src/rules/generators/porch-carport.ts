import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { engineVehicle } from '../when/engine-vehicle';
import { firstOf } from '../when/first-of';
import { portableGenerator } from '../when/portable-generator';
import { said } from '../when/said';

/** A covered or half-closed place counts as indoors. Silent once an open place 20 ft off is named, unless it stood under a roof the last time. */
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
          because: 'You named a covered place for the generator.',
          unknown: 'We do not know where a generator would stand.',
        })
      : yes('There is no open ground of your own for a generator.');
    const unplaced = facts.open('engine-place') ? generator : null;
    const running = facts.has('now-danger', 'engine-near')
      ? yes('A generator runs in a covered place or near an opening.')
      : null;
    const stood =
      facts.told('engine-stood') && facts.is('engine-stood', 'porch-carport', 'garage-shed')
        ? yes('Your generator stood in a covered place the last time it ran.')
        : null;
    return firstOf(running, stood, both(place, generator), unplaced);
  },
};
