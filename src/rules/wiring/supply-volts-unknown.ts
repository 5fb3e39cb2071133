import type { Rule } from '../rule';
import { ifOpen } from '../when/if-open';

/** An apartment or off-grid home whose volts nobody has asked about. */
export const supplyVoltsUnknown: Rule = {
  id: 'supply-volts-unknown',
  applies: ({ facts }) => ifOpen(facts, 'supply-volts', 'not-known-voltage-home'),
};
