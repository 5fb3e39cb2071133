import { fixedBatteryKinds } from '../../home/route-kind';
import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { routeIn } from '../when/route-in';

/** A new battery beside solar that is there already. */
export const oldSolarNewBattery: Rule = {
  id: 'old-solar-new-battery',
  applies: ({ facts }, kinds) =>
    both(
      facts.has('own-sources', 'solar') ? yes('You have solar and would add a battery.') : null,
      routeIn(kinds, fixedBatteryKinds, 'A home battery is in your plan.'),
    ),
};
