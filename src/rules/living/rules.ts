import type { Rule } from '../rule';
import { charcoalIndoors } from './charcoal-indoors';
import { coldRoom } from './cold-room';
import { foodClock } from './food-clock';
import { heatRoom } from './heat-room';
import { ovenHeat } from './oven-heat';

/** Heat, cold, water, food and getting out, in printing order. */
export const livingRules: readonly Rule[] = [
  ovenHeat,
  charcoalIndoors,
  coldRoom,
  heatRoom,
  foodClock,
];
