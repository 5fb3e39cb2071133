import { fixedBatteryKinds } from '../../home/route-kind';
import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeIn } from '../when/route-in';

/** The size on the box is not what comes out. */
export const usableKwh: Rule = {
  id: 'usable-kwh',
  applies: ({ facts }, kinds) =>
    firstOf(
      facts.has('own-sources', 'power-pack', 'home-battery') ? yes('You have a battery.') : null,
      routeIn(
        kinds,
        ['single-battery', 'power-pack', ...fixedBatteryKinds],
        'A battery is in your plan.',
      ),
    ),
};
