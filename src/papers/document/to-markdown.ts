import { fittingTable, rowsAsLines } from '../markdown/table';
import { folded } from '../pictures/folded';
import type { PictureTable } from '../pictures/picture';
import type { Block } from './block';

/** Columns of the Markdown of a sheet: it fits a terminal and a letter page. */
export const MARKDOWN_COLUMNS = 80;

/**
 * Blocks as Markdown of at most 80 columns. A heading stands right over what it is about: a page holds more so.
 * @param tight no empty line before a heading or a line in bold either
 */
export function blocksToMarkdown(blocks: readonly Block[], tight = false): string {
  let before: Block | null = null;
  let written = '';
  for (const block of blocks) {
    const text = linesOf(block, tight).join('\n');
    if (before !== null) written += gap(before, block, tight);
    // What is in bold ends the line before it where it fits.
    const last = written.slice(written.lastIndexOf('\n', written.length - 2) + 1);
    if (inOneParagraph(before, block, tight) && last.length + text.length <= MARKDOWN_COLUMNS)
      written = `${written.slice(0, -1)} `;
    written += text;
    before = block;
  }
  return written;
}

/** Of a page that is full: a line in bold that goes on the text before it. */
const inOneParagraph = (before: Block | null, after: Block, tight: boolean) =>
  tight && before?.kind === 'say' && after.kind === 'say' && after.strong === true;

/** A heading ends what stood before it in every reader of Markdown; a list and a drawing end a line of text. */
function gap(before: Block, after: Block, tight: boolean): string {
  const under = before.kind === 'heading';
  const over = tight && after.kind === 'heading';
  const list =
    (before.kind === 'say' && startsList.includes(after.kind)) || after.kind === 'picture';
  return under || over || list || inOneParagraph(before, after, tight) ? '\n' : '\n\n';
}

const startsList: readonly Block['kind'][] = ['bullets', 'steps', 'boxes', 'blanks'];

function linesOf(block: Block, tight: boolean): string[] {
  switch (block.kind) {
    case 'heading':
      return [`### ${escaped(block.text)}`];
    case 'say':
      return block.strong
        ? folded(escaped(block.text), MARKDOWN_COLUMNS - 4).map((line) => `**${line}**`)
        : folded(escaped(block.text), MARKDOWN_COLUMNS);
    case 'bullets':
      return block.items.flatMap((item) => hanging('- ', item));
    case 'steps':
      return block.items.flatMap((item, i) =>
        hanging(`${i + 1}. ${block.boxes ? '[ ] ' : ''}`, item),
      );
    case 'boxes':
      return tight ? boxesSharing(block.items) : block.items.flatMap(boxed);
    case 'blanks':
      return sharing(block.names).map(blankLine);
    case 'table':
      return tableLines(block);
    case 'picture': {
      const lines = block.picture.inTerminal(MARKDOWN_COLUMNS - 4, 'ascii');
      return ['```text', ...lines, '```'];
    }
  }
}

/** A line to write on. Between spaces and at the end of a line no reader takes it for a mark. */
const RULED = '_'.repeat(10);

/** Names that fit beside each other with their lines to write on share a line, which saves a sheet a page. */
function sharing(names: readonly string[]): string[][] {
  const lines: string[][] = [];
  for (const name of names) {
    const fits = lines.find((line) => blankLine([...line, name]).length <= MARKDOWN_COLUMNS);
    if (fits === undefined) lines.push([name]);
    else fits.push(name);
  }
  return lines;
}

const blankLine = (names: readonly string[]) =>
  `- ${names.map((name) => `${escaped(name)}: ${RULED}`).join('  ')}`;

const BOXED = '- [ ] ';
const boxed = (text: string): string[] => hanging(BOXED, text);

/** On a page that is full, short things to tick share a line: they stand in no order. */
function boxesSharing(items: readonly string[]): string[] {
  const lines: string[][] = [];
  for (const item of items) {
    const [only, ...more] = boxed(item);
    const next = `  ${only!.slice('- '.length)}`;
    const fits = lines.find(
      ([one, ...rest]) =>
        more.length + rest.length === 0 && one!.length + next.length <= MARKDOWN_COLUMNS,
    );
    if (fits === undefined) lines.push([only!, ...more]);
    else fits[0] += next;
  }
  return lines.flat();
}

function hanging(mark: string, text: string): string[] {
  const pad = ' '.repeat(mark.length);
  return folded(escaped(text), MARKDOWN_COLUMNS - mark.length).map(
    (line, i) => (i === 0 ? mark : pad) + line,
  );
}

/** A table where it fits the columns, else each row as a line under its first cell. */
function tableLines({ head, rows }: PictureTable): string[] {
  const cell = (text: string) => escaped(text).replace(/\|/g, '\\|');
  const table = fittingTable(
    head.map(cell),
    rows.map((cells) => cells.map(cell)),
  );
  return table ?? rowsAsLines(head, rows).flatMap((line) => hanging('- ', line));
}

/** Signs that Markdown would read as marks, where the text means itself. */
function escaped(text: string): string {
  return text.replace(/[\\`*_<>[\]#~]/g, (sign) => `\\${sign}`);
}
