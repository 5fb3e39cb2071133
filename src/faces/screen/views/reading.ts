import { questionAt } from '../../../interview/questions/relevant';
import { rowsOf } from '../../../interview/rows';
import { type CutRule, cutLines, fitParts } from '../fit-parts';
import { footLines, footWithin } from '../foot';
import { type Frame, type FrameParts, frameHeight } from '../frame';
import { type Line, styled, wrapText } from '../line';
import { messageLines } from '../message-lines';
import { rowLines } from '../row-lines';
import { scrollLines } from '../scroll-lines';
import { windowLines } from '../window-lines';

export interface Reading {
  readonly title: string;
  /** The text, already wrapped. */
  readonly text: readonly Line[];
}

/** A title, a text that scrolls, and the rows to leave by. */
export function readingFrame(parts: FrameParts, width: number, { title, text }: Reading): Frame {
  const { context, state, size, glyphs } = parts;
  const question = questionAt(context, state.at);
  const head = styled(wrapText(title, width), { bold: true });
  const block = rowLines({ rows: rowsOf(context, state), state, question, width });
  const message = messageLines(state, width);
  const foot = footLines(parts, question, width);
  const heights = fitParts(
    [
      { name: 'head', height: head.length },
      { name: 'gap-head', height: text.length > 0 ? 1 : 0 },
      { name: 'text', height: text.length },
      // One line that says where in the text we are, or stays blank.
      { name: 'place', height: 1 },
      { name: 'rows', height: block.lines.length },
      { name: 'message', height: message.length },
      { name: 'gap-foot', height: 1 },
      { name: 'foot', height: foot.length },
    ],
    frameHeight(size.rows),
    CUT_ORDER,
  );
  const tall = (name: string) => heights.get(name)!;
  const scrolled = scrollLines({ lines: text, height: tall('text'), scroll: state.scroll });
  const rows = windowLines({ ...block, height: tall('rows'), width, glyphs });
  const lines = [
    ...cutLines(head, tall('head'), glyphs.cut),
    ...(tall('gap-head') > 0 ? [[]] : []),
    ...scrolled.lines,
    scrolled.place === null ? [] : [{ text: scrolled.place.slice(0, width), dim: true }],
    ...rows.lines,
    ...cutLines(message, tall('message'), glyphs.cut),
    ...(tall('gap-foot') > 0 ? [[]] : []),
    ...footWithin(parts, question, { width, height: tall('foot') }),
  ];
  return { lines, cursor: null, maxScroll: scrolled.maxScroll, page: scrolled.lines.length };
}

const CUT_ORDER: readonly CutRule[] = [
  ['gap-foot', 0],
  ['gap-head', 0],
  ['text', 6],
  ['foot', 1],
  ['head', 2],
  ['rows', 2],
  ['message', 1],
  ['rows', 1],
  ['text', 3],
  // What to do now is read before anything else: it gives way last but one.
  ['head', 1],
  ['text', 2],
  ['message', 0],
  ['text', 1],
];
