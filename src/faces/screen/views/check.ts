import { NOT_SURE } from '../../../interview/answers';
import { questionAt } from '../../../interview/questions/relevant';
import { type Row, rowsOf } from '../../../interview/rows';
import type { Context } from '../../../interview/state';
import { checkHint, checkTitle } from '../../check-words';
import { type CutRule, cutLines, fitParts } from '../fit-parts';
import { footLines, footWithin } from '../foot';
import { type Frame, type FrameParts, frameHeight } from '../frame';
import { HIDDEN_ANSWER, hideOf, hidesAnswer } from '../hiding';
import { type Line, styled, wrapText } from '../line';
import { messageLines } from '../message-lines';
import { labelLines } from '../row-lines';
import { windowLines } from '../window-lines';

/** All answers under their topics, each of which can be changed. */
export function checkFrame(parts: FrameParts, width: number, pane: readonly Line[]): Frame {
  const { context, state, size, glyphs } = parts;
  const head = styled(wrapText(checkTitle(state), width), { bold: true });
  const hint = styled(wrapText(checkHint(context, state), width));
  const block = listLines(parts, width);
  const message = messageLines(state, width);
  const foot = footLines(parts, questionAt(context, state.at), width);
  const heights = fitParts(
    [
      { name: 'head', height: head.length },
      { name: 'hint', height: hint.length },
      { name: 'gap-rows', height: 1 },
      { name: 'rows', height: block.lines.length },
      { name: 'message', height: message.length },
      { name: 'gap-pane', height: pane.length > 0 ? 1 : 0 },
      { name: 'pane', height: pane.length },
      { name: 'gap-foot', height: 1 },
      { name: 'foot', height: foot.length },
    ],
    frameHeight(size.rows),
    CUT_ORDER,
  );
  const tall = (name: string) => heights.get(name)!;
  const blank = (name: string): Line[] => (tall(name) > 0 ? [[]] : []);
  const lines = [
    ...cutLines(head, tall('head'), glyphs.cut),
    ...cutLines(hint, tall('hint'), glyphs.cut),
    ...blank('gap-rows'),
    ...windowLines({ ...block, height: tall('rows'), width, glyphs }).lines,
    ...cutLines(message, tall('message'), glyphs.cut),
    ...blank('gap-pane'),
    ...cutLines(pane, tall('pane'), glyphs.cut),
    ...blank('gap-foot'),
    ...footWithin(parts, questionAt(context, state.at), { width, height: tall('foot') }),
  ];
  return { lines, cursor: null, maxScroll: 0, page: 1 };
}

const CUT_ORDER: readonly CutRule[] = [
  ['pane', 2],
  ['gap-pane', 0],
  ['rows', 12],
  ['pane', 0],
  ['gap-foot', 0],
  ['gap-rows', 0],
  ['rows', 6],
  ['hint', 0],
  ['foot', 1],
  ['message', 2],
  ['rows', 2],
];

function listLines(parts: FrameParts, width: number) {
  const { context, state } = parts;
  const lines: Line[] = [];
  const starts: number[] = [];
  let [from, to] = [0, 0];
  let topic = '';
  rowsOf(context, state).forEach((row, i) => {
    const heading = headingOf(context, row);
    if (heading !== null && heading !== topic) {
      topic = heading;
      lines.push([], ...styled(wrapText(heading, width), { bold: true }));
    }
    if (row.kind === 'act' && i > 0) lines.push([]);
    const here = i === state.row;
    const start = lines.length;
    starts.push(start);
    lines.push(...rowText(parts, row, here, width));
    if (here) [from, to] = [start, lines.length - 1];
  });
  return { lines, starts, from, to };
}

function headingOf(context: Context, row: Row): string | null {
  if (row.kind !== 'answer') return null;
  const { topic } = questionAt(context, row.id);
  return context.interview.topics.find((t) => t.id === topic)?.title ?? topic;
}

/** Answers worth finding out carry a question mark in front. */
function rowText(
  { context, state, hiding }: FrameParts,
  row: Row,
  here: boolean,
  width: number,
): Line[] {
  if (row.kind !== 'answer')
    return labelLines('', row.kind === 'act' ? row.label : '', here, width);
  const open = state.answers[row.id] === NOT_SURE || state.answers[row.id] === undefined;
  const answered = state.answers[row.id] !== undefined;
  const hidden = answered && hidesAnswer(hiding, context.interview, row.id);
  const said = hidden ? HIDDEN_ANSWER : row.said;
  return labelLines(
    open && !hidden ? '? ' : '  ',
    `${hideOf(hiding)(row.label)}: ${said}`,
    here,
    width,
  );
}
