import type { Held } from '../seen';
import { sheetsAsSummary } from './pages';
import { quoteAsPlanFile } from './quote-figures';
import { deadlyFirst, detailsOnce, noRawMark, nothingPrivate, saidOnce, sheetsFit } from './sheets';

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
