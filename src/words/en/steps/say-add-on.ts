import type { AddOn, AddOnId } from '../../../plan/steps/add-ons';
import { formatRange } from '../../../quantity/format-quantity';

const names: Readonly<Record<AddOnId, string>> = {
  'sump-battery': 'Second sump pump with its own battery and alarm',
  'room-heater': 'Listed plug-in heater of 750 to 1500 W, with a tip-over switch',
  'room-cooler': 'Window air conditioner for one room, 120 V, variable speed (inverter)',
};

const because: Readonly<Record<AddOnId, string>> = {
  'sump-battery':
    'it works when nobody is home, when the generator rests and when the first source fails',
  'room-heater': 'the plan counts on it for the one warm room; you may have one already',
  'room-cooler':
    'the plan counts on it for the one cool room; if you have one already, read its label: an older one starts harder and takes more power than is counted here',
};

export const addOnName = ({ id }: AddOn) => names[id];
export const addOnBecause = ({ id }: AddOn) => because[id];
export const addOnUsd = ({ usdLow, usdLikely, usdHigh }: AddOn) =>
  formatRange(usdLow, usdLikely, usdHigh, '$');
export const addOnCost = (one: AddOn) => `${addOnUsd(one)}, prices of ${one.year}`;
