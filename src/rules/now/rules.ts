import type { Rule } from '../rule';
import { coSigns } from './co-signs';
import { fallenWire } from './fallen-wire';
import { gasSmell } from './gas-smell';
import { hotPanel } from './hot-panel';
import { waterAndElectricity } from './water-and-electricity';

/** What to do when something is wrong, in printing order. */
export const nowRules: readonly Rule[] = [
  coSigns,
  gasSmell,
  waterAndElectricity,
  hotPanel,
  fallenWire,
];
