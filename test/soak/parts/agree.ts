import { completeHome } from '../../complete-home';
import { randomHome } from '../../random-home';
import {
  nobodyToCall,
  oneAddOnPrice,
  oneCountOfGallons,
  oneCountOfHours,
  oneCountOfThings,
  onePrice,
} from '../never/agree';
import {
  fileAsPlanned,
  frontAsPlanned,
  frontInDetails,
  fuelOnce,
  partsAddUp,
} from '../never/figures';
import { pagesAsTexts, sheetsAsSummary } from '../never/pages';
import type { Part } from '../part';
import type { Held } from '../seen';
import { tryPlan } from '../try-plan';

/** What must be one figure wherever it stands. */
const held: Readonly<Record<string, Held>> = {
  'one price': onePrice,
  'one count of hours': oneCountOfHours,
  'one count of things': oneCountOfThings,
  'one count of gallons': oneCountOfGallons,
  'one price of what stands beside': oneAddOnPrice,
  'nobody to call, and no work for one': nobodyToCall,
  'first page in the details': frontInDetails,
  'first page as planned': frontAsPlanned,
  'parts add up': partsAddUp,
  'hours with the cans filled': fuelOnce,
  'plan file as planned': fileAsPlanned,
  'sheets in the summary': sheetsAsSummary,
  'pages as their texts': pagesAsTexts,
};

/** All papers of homes made up by chance, every second of which knows itself: consistent to the last figure. */
export const agree: Part = {
  whole: 300,
  of: 'home',
  try(seed, tally) {
    const answers = seed % 2 === 1 ? randomHome(seed) : completeHome(seed);
    tryPlan(`home ${seed}`, answers, tally, held);
  },
};
