import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { familySheet } from './family';
import { fileSheets } from './file-blocks';
import { fridgeSheet } from './fridge';
import { healthSheet } from './health';
import { familySheets } from './may-hold';
import { quoteSheet } from './quote';
import type { Sheet } from './sheet';
import { yearSheet } from './year';

/**
 * Every sheet of a plan, in the order of reading. A plan of too few answers has none; there is a sheet to quote only
 * where an electrician has something to do, and a health sheet only where a device was told.
 */
export function sheetsOf(plan: Plan, words: Words): Sheet[] {
  if (plan.undecided.length > 0) return [];
  const health = healthSheet(plan, words);
  return [
    fridgeSheet(plan, words),
    familySheet(plan, words),
    yearSheet(plan, words),
    ...(plan.electricianFor === 'nothing' ? [] : [quoteSheet(plan, words)]),
    ...fileSheets(plan, words),
    ...(health === null ? [] : [health]),
  ];
}

export const isFamilys = ({ id }: Sheet) => familySheets.includes(id);
