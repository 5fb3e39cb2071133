import type { Rule } from '../rule';
import { interlockOrder } from './interlock-order';
import { neutralBond } from './neutral-bond';
import { oneLeg120 } from './one-leg-120';
import { solarWithEngine } from './solar-with-engine';
import { transferListed } from './transfer-listed';

/** Panel, transfer, neutral and service, in printing order. */
export const wiringRules: readonly Rule[] = [
  interlockOrder,
  transferListed,
  neutralBond,
  oneLeg120,
  solarWithEngine,
];
