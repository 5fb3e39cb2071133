import { randomHome } from '../../random-home';
import { sheetsAsSummary } from '../never/pages';
import { quoteAsPlanFile } from '../never/quote-figures';
import {
  deadlyFirst,
  detailsOnce,
  noRawMark,
  nothingPrivate,
  saidOnce,
  sheetsFit,
} from '../never/sheets';
import { note, type Part } from '../part';
import { type Held, seenOf } from '../seen';

/** What is held of every sheet. */
export const heldOfSheets: Readonly<Record<string, Held>> = {
  'sheets on their pages': sheetsFit,
  'what kills on the first page of the night': deadlyFirst,
  'no raw mark on a sheet': noRawMark,
  'nothing twice on a sheet': saidOnce,
  'nothing twice in the details': detailsOnce,
  'nothing private for a stranger': nothingPrivate,
  'figures of the sheets in the summary': sheetsAsSummary,
  'watts of the quote in the plan file': quoteAsPlanFile,
};

/** Every sheet of homes made up by chance, those of strangers too. */
export const sheets: Part = {
  whole: 300,
  of: 'home',
  try(seed, tally) {
    const seen = seenOf(randomHome(seed));
    for (const [what, holds] of Object.entries(heldOfSheets)) {
      const wrong = holds(seen);
      if (wrong !== null) note(tally, `home ${seed}`, what, wrong);
    }
  },
};
