import { fixedBatteryKinds } from '../../home/route-kind';
import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { routeIn } from '../when/route-in';

/** Solar or storage joined to the grid needs the utility's word first. */
export const utilityApproval: Rule = {
  id: 'utility-approval',
  applies: ({ facts }, kinds) =>
    both(
      facts.has('permissions', 'utility-asked') ||
        (facts.told('home-kind') && facts.is('home-kind', 'off-grid'))
        ? null
        : yes('The power company has not been asked.'),
      routeIn(kinds, fixedBatteryKinds, 'Storage or solar is in your plan.'),
    ),
};
