import { planPapers } from '../../../src/commands/plan-papers';
import { isHealthDevice } from '../../../src/home/people/health-devices';
import { mayHold } from '../../../src/papers/sheets/may-hold';
import { sheetPage } from '../../../src/papers/sheets/sheet-to-html';
import { sheetToMarkdown } from '../../../src/papers/sheets/sheet-to-markdown';
import { sheetsOf } from '../../../src/papers/sheets/sheets-of';
import type { Plan } from '../../../src/plan/plan';
import { visible } from '../../../src/quantity/visible';
import { english } from '../../../src/words/en';
import type { Held } from '../seen';
import { BROKEN } from './papers';

const COLUMNS = 80;
const PAGE_LINES = 54;
/** Sheets that may run on: to a second page, and of a home with much in it half a page more. */
const runOn = ['fridge', 'family', 'quote', 'health'];

/** Each sheet is lines of 80 columns on its page or two, and nothing on it is empty. */
export const sheetsFit: Held = ({ plan }) =>
  sheetsOf(plan, english).flatMap((sheet) => {
    const lines = sheetToMarkdown(sheet).split('\n');
    const pages = runOn.includes(sheet.id) ? 2.5 : 1;
    const most = pages * PAGE_LINES + (sheet.id === 'quote' ? moreCircuits(plan) : 0);
    const empty = sheet.blocks.some(
      (block) =>
        ('items' in block && block.items.length === 0) ||
        ('rows' in block && block.rows.length === 0) ||
        ('names' in block && block.names.length === 0),
    );
    return [
      ...lines
        .filter((line) => line.length > COLUMNS)
        .map((line) => `${sheet.id}, too wide: ${line}`),
      ...(lines.length > most ? [`${sheet.id} takes ${lines.length} lines`] : []),
      ...(empty ? [`${sheet.id} has an empty block`] : []),
    ];
  });

/** Lines of the circuits above eight: a house with many has a longer table. */
const moreCircuits = ({ electrical }: Plan) =>
  2 * Math.max(0, electrical.scope.circuits.length - 8);

/** What kills and when to leave stand on the first page of the sheet for the night. */
export const deadlyFirst: Held = ({ plan }) =>
  sheetsOf(plan, english)
    .filter(({ id }) => id === 'fridge')
    .flatMap((sheet) => {
      const page = sheetToMarkdown(sheet).split('\n').slice(0, PAGE_LINES).join('\n');
      const { kills, leave } = english.sheets.fridge;
      return [kills, leave]
        .filter((heading) => !page.includes(`### ${heading}`))
        .map((heading) => `not on the first page of the fridge sheet: ${heading}`);
    });

/** A sheet for a stranger holds no name, no money, no place and no device. */
export const nothingPrivate: Held = ({ plan, answers }) => {
  const named = { ...plan, name: 'quibbleworth' };
  const zip = String(answers['home-zip'] ?? 'no place');
  const devices = plan.home.loads.filter(isHealthDevice).map((load) => load.name);
  return sheetsOf(named, english)
    .filter((sheet) => mayHold[sheet.id].length === 0)
    .flatMap((sheet) => {
      const paper = `${sheetToMarkdown(sheet)}\n${sheetPage(sheet, english)}`;
      const found = ['quibbleworth', zip, ...devices].filter((word) =>
        new RegExp(`(?<![\\w#])${word.replace(/[^\w ]/g, '.')}(?!\\w)`, 'i').test(paper),
      );
      return [
        ...found.map((word) => `${sheet.id} holds ${word}`),
        ...(/\$\s?\d/.test(paper) ? [`${sheet.id} holds money`] : []),
      ];
    });
};

/** Every paper is sound: no broken figure, no control byte, no script. */
export const everyPaper: Held = ({ plan }) =>
  planPapers(plan, 'oak', english).flatMap(({ file, text }) => [
    ...(BROKEN.test(text) ? [`${file}: ${BROKEN.exec(text)![0]}`] : []),
    ...(visible(text) === text ? [] : [`${file} holds a control byte`]),
    ...(/<script|javascript:/i.test(text) ? [`${file} holds a script`] : []),
  ]);
