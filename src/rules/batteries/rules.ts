import type { Rule } from '../rule';
import { batterySmoke } from './battery-smoke';
import { noFreezingCharge } from './no-freezing-charge';
import { storageLimits } from './storage-limits';

/** Batteries and solar, in printing order. */
export const batteryRules: readonly Rule[] = [batterySmoke, storageLimits, noFreezingCharge];
