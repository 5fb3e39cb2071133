import { sheetToMarkdown } from '../papers/sheets/sheet-to-markdown';
import { sheetsOf } from '../papers/sheets/sheets-of';
import type { Plan } from '../plan/plan';
import { nearWord } from '../quantity/near-word';
import { visible } from '../quantity/visible';
import type { Words } from '../words/words';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { printErr, printOut } from './print';

/** `lampkeeper plan HOME --sheet NAME`: one sheet alone, as text that fits a page and a terminal. */
export function printSheet(plan: Plan, name: string, words: Words): number {
  const sheets = sheetsOf(plan, words);
  if (sheets.length === 0) {
    printErr('Too little is told for a sheet yet. Go on with the questions first.\n');
    return FAILED;
  }
  const found = sheets.find(({ id }) => id === name);
  if (found === undefined) {
    const ids = sheets.map(({ id }) => id);
    const near = nearWord(name, ids);
    const hint = near === null ? '' : ` Did you mean "${near}"?`;
    printErr(`This plan has no sheet "${name}".${hint} It has: ${ids.join(', ')}.\n`);
    return WRONG_USAGE;
  }
  printOut(`${visible(sheetToMarkdown(found))}\n`);
  return DONE;
}
