import type { Rule } from '../rule';
import { device } from '../when/device';

/** Insulin and other medicine that must stay cool. */
export const medicineCool: Rule = {
  id: 'medicine-cool',
  applies: (home) => device(home, ['fridge-medicine'], 'medicine-must-stay-cool'),
};
