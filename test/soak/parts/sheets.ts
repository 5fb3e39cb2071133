import { randomHome } from '../../random-home';
import { heldOfSheets } from '../never/of-sheets';
import type { Part } from '../part';
import { tryPlan } from '../try-plan';

/** Every sheet of homes made up by chance, those of strangers too. */
export const sheets: Part = {
  whole: 300,
  of: 'home',
  try(seed, tally) {
    tryPlan(`home ${seed}`, randomHome(seed), tally, heldOfSheets);
  },
};
