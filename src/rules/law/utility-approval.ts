import { hasFixedBattery } from '../../kinds/ask-traits';
import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { routeWith } from '../when/route-with';

/** Solar or storage joined to the grid needs the utility's word first. */
export const utilityApproval: Rule = {
  id: 'utility-approval',
  applies: ({ facts }, routes) =>
    both(
      facts.has('permissions', 'utility-asked') ||
        (facts.told('home-kind') && facts.is('home-kind', 'off-grid'))
        ? null
        : yes('power-company-not-asked'),
      routeWith(routes, hasFixedBattery, 'storage-solar-plan'),
    ),
};
