import type { Rule } from '../rule';
import { associationConsent } from './association-consent';
import { compareBids } from './compare-bids';
import { endedCredit } from './ended-credit';
import { estimatesOnly } from './estimates-only';
import { insurerTold } from './insurer-told';
import { landlordConsent } from './landlord-consent';
import { littleIsEnough } from './little-is-enough';
import { permitInspection } from './permit-inspection';
import { rehearsalPanel } from './rehearsal-panel';
import { rehearseOnce } from './rehearse-once';
import { utilityApproval } from './utility-approval';

/** Permits, consent, money and how far to trust the plan, in printing order. */
export const lawRules: readonly Rule[] = [
  rehearsalPanel,
  rehearseOnce,
  estimatesOnly,
  permitInspection,
  utilityApproval,
  insurerTold,
  landlordConsent,
  associationConsent,
  endedCredit,
  compareBids,
  littleIsEnough,
];
