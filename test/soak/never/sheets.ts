import { tellsOfHealth } from '../../../src/home/people/health-devices';
import type { Block } from '../../../src/papers/document/block';
import { blocksToMarkdown } from '../../../src/papers/document/to-markdown';
import { detailsMarkdown } from '../../../src/papers/household/to-markdown';
import { mayHold } from '../../../src/papers/sheets/may-hold';
import type { SheetId } from '../../../src/papers/sheets/sheet';
import { sheetPage } from '../../../src/papers/sheets/sheet-to-html';
import { sheetToMarkdown } from '../../../src/papers/sheets/sheet-to-markdown';
import { sheetsOf } from '../../../src/papers/sheets/sheets-of';
import { visible } from '../../../src/quantity/visible';
import { english } from '../../../src/words/en';
import { mayBeTwice, saidTwice } from '../../papers/said-twice';
import type { Held } from '../seen';
import { BROKEN } from './papers';

const COLUMNS = 80;
const PAGE_LINES = 54;

/**
 * Lines of text of those that may run onto a second page, in print still one: homes made up by chance have more that is
 * wrong, open or at odds than any home; of 500 the longest quote takes 76. Every other sheet is a page.
 */
const runOn: Readonly<Partial<Record<SheetId, number>>> = { fridge: 70, family: 90, quote: 80 };

/** Each sheet is lines of 80 columns on its page or little more, and nothing on it is empty. */
export const sheetsFit: Held = ({ plan }) =>
  sheetsOf(plan, english).flatMap((sheet) => {
    const lines = sheetToMarkdown(sheet).split('\n');
    // A danger told now stands before everything, however much that is.
    const danger = plan.danger === null ? 0 : PAGE_LINES / 2;
    const most = (runOn[sheet.id] ?? PAGE_LINES) + danger;
    return [
      ...lines
        .filter((line) => line.length > COLUMNS)
        .map((line) => `${sheet.id}, too wide: ${line}`),
      ...(lines.length > most ? [`${sheet.id} takes ${lines.length} lines`] : []),
      ...(sheet.blocks.some(isEmpty) ? [`${sheet.id} has an empty block`] : []),
    ];
  });

function isEmpty(block: Block): boolean {
  const items =
    'items' in block
      ? block.items
      : 'names' in block
        ? block.names
        : 'rows' in block
          ? block.rows.map((cells) => cells[0] ?? '')
          : 'text' in block
            ? [block.text]
            : ['picture'];
  return items.length === 0 || items.some((item) => item.trim() === '');
}

/** What a broken sentence leaves behind: marks of a format, and signs that stand for something missing. */
const RAW = /\*\*|`|[{}<>|\\]|\(\s*\)|\s[,.;:](?:\s|$)|[,;:]\s*[.,;]|\.\.(?!\.)|\bnull\b/;

/** No text of a sheet holds a raw mark or a hole. */
export const noRawMark: Held = ({ plan }) =>
  sheetsOf(plan, english).flatMap((sheet) =>
    sheet.blocks
      .flatMap((block) => ('items' in block ? block.items : 'text' in block ? [block.text] : []))
      .filter((text) => RAW.test(text))
      .map((text) => `${sheet.id}: ${text}`),
  );

/** What a part of a sentence that came out empty leaves behind in running text. */
const HOLE = /\(\s*\)|[,;:]\s*[.,;](?!\d)/;

/** No line of the first page or the details has a hole. */
export const noHole: Held = ({ text }) =>
  text
    .split('\n')
    .filter((line) => HOLE.test(line))
    .map((line) => `a hole: ${line}`);

/** No sheet says a sentence twice, but for the steps that stand in the way there and in the way back. */
export const saidOnce: Held = ({ plan }) =>
  sheetsOf(plan, english).flatMap((sheet) =>
    saidTwice(blocksToMarkdown(sheet.blocks))
      .filter(({ sentence }) => !bothWays.some((step) => step.includes(sentence)))
      .map(({ sentence }) => `${sheet.id}: ${sentence}`),
  );

/** The details say nothing twice but what has a reason to stand in each place. */
export const detailsOnce: Held = ({ plan }) =>
  saidTwice(detailsMarkdown(plan, english))
    .filter((one) => !mayBeTwice(one))
    .map(({ sentence, parts }) => `in ${[...new Set(parts)].join(' and ')}: ${sentence}`);

const bothWays = [
  english.sheets.handSteps['branches-off'],
  english.sheets.handSteps['read-display'],
];

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
  const devices = plan.home.loads.filter(tellsOfHealth).map((load) => english.called(load.called));
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
export const everyPaper: Held = ({ papers }) =>
  papers.flatMap(({ file, text }) => [
    ...(BROKEN.test(text) ? [`${file}: ${BROKEN.exec(text)![0]}`] : []),
    ...(visible(text) === text ? [] : [`${file} holds a control byte`]),
    ...(/<script|javascript:/i.test(text) ? [`${file} holds a script`] : []),
  ]);
