import { HOMES_HELP, HOMES_TITLE } from '../home-choice';
import { cutLines, fitParts } from './fit-parts';
import { flow } from './foot-items';
import { type Frame, frameHeight, textWidth } from './frame';
import type { Glyphs } from './glyphs';
import { type Line, styled, wrapText } from './line';
import { labelLines } from './row-lines';
import type { Size } from './watch-size';
import { windowLines } from './window-lines';

export interface HomesParts {
  readonly title: string;
  readonly hint: string;
  /** The list that is left to nowhere; else Esc goes back to it. */
  readonly isFirst: boolean;
  readonly labels: readonly string[];
  /** How many of them are homes begun before; what begins another one stands below. */
  readonly homes: number;
  readonly row: number;
  readonly error: string | null;
  /** Keys besides those that choose. */
  readonly keys: readonly string[];
  readonly size: Size;
  readonly glyphs: Glyphs;
}

const KEYS = ['Up Down or number', 'Enter choose'];
/** In a low window the homes need the lines more. */
const SELDOM = ['? help', 'Page Up Page Down Home End', 'Ctrl+S leave'];
const ROOMY_FROM = 20;

/** A title, the homes to choose from, and the keys. */
export function homesFrame(parts: HomesParts): Frame {
  const { labels, homes, row, error, keys, size, glyphs } = parts;
  const width = textWidth(size.columns);
  const head = styled(wrapText(parts.title, width), { bold: true });
  const hint = styled(wrapText(parts.hint, width));
  const block = rowsOf(labels, homes, row, width);
  const message = error === null ? [] : wrapText(`Error: ${error}`, width);
  const seldom = size.rows < ROOMY_FROM ? [] : SELDOM;
  const items = [
    ...KEYS.slice(0, 1),
    ...keys,
    ...KEYS.slice(1),
    ...seldom,
    parts.isFirst ? 'Esc leave' : 'Esc back',
  ];
  const foot = styled(flow(items, width, '   '), { dim: true });
  const heights = fitParts(
    [
      { name: 'head', height: head.length },
      { name: 'hint', height: hint.length },
      { name: 'gap-rows', height: 1 },
      { name: 'rows', height: block.lines.length },
      { name: 'gap-message', height: message.length > 0 ? 1 : 0 },
      { name: 'message', height: message.length },
      { name: 'gap-foot', height: 1 },
      { name: 'foot', height: foot.length },
    ],
    frameHeight(size.rows),
    [
      ['gap-message', 0],
      ['gap-rows', 0],
      ['gap-foot', 0],
      ['rows', 4],
      ['hint', 0],
      ['rows', 2],
    ],
  );
  const tall = (name: string) => heights.get(name)!;
  const blank = (name: string): Line[] => (tall(name) > 0 ? [[]] : []);
  const lines = [
    ...head,
    ...cutLines(hint, tall('hint'), glyphs.cut),
    ...blank('gap-rows'),
    ...windowLines({ ...block, height: tall('rows'), width, glyphs }).lines,
    ...blank('gap-message'),
    ...styled(message, { bold: true, tone: 'alarm' }),
    ...blank('gap-foot'),
    ...foot,
  ];
  return { lines, cursor: null, maxScroll: 0, page: 1 };
}

/** What begins another home stands apart. */
function rowsOf(labels: readonly string[], homes: number, row: number, width: number) {
  const lines: Line[] = [];
  const starts: number[] = [];
  let [from, to] = [0, 0];
  labels.forEach((label, i) => {
    if (i > 0 && i === homes) lines.push([]);
    const start = lines.length;
    starts.push(start);
    lines.push(...labelLines(`${i + 1}. `, label, i === row, width));
    if (i === row) [from, to] = [start, lines.length - 1];
  });
  return { lines, starts, from, to };
}

/** What the list is for, over it until a key leads back. */
export function homesHelpFrame(size: Size, glyphs: Glyphs): Frame {
  const width = textWidth(size.columns);
  const head = styled(wrapText(HOMES_TITLE, width), { bold: true });
  const text = HOMES_HELP.flatMap((says) => [[], ...styled(wrapText(says, width))]);
  const foot = styled(flow(['Enter or Esc back', 'Ctrl+S leave'], width, '   '), { dim: true });
  const room = Math.max(0, frameHeight(size.rows) - head.length - foot.length - 1);
  const lines = [...head, ...cutLines(text, room, glyphs.cut), [], ...foot];
  return { lines, cursor: null, maxScroll: 0, page: 1 };
}
