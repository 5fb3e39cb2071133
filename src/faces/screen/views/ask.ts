import { tellsOfHidden } from '../../../interview/questions/is-hidden';
import { questionAt } from '../../../interview/questions/relevant';
import { rowsOf } from '../../../interview/rows';
import type { Context, State } from '../../../interview/state';
import { leftWords, placeWords } from '../../place-words';
import { whyNowWords } from '../../why-now-words';
import type { PaneBelow } from '../draft-pane';
import { type CutRule, cutLines, fitParts } from '../fit-parts';
import { footLines, footWithin } from '../foot';
import { type Frame, type FrameParts, frameHeight } from '../frame';
import { hideOf, hidesAnswer } from '../hiding';
import { type Line, styled, widthOf, wrapText } from '../line';
import { messageLines } from '../message-lines';
import { rowLines } from '../row-lines';
import { windowLines } from '../window-lines';

/** One question: where we are, the question, a hint, the rows, a message, the sums below. */
export function askFrame(parts: FrameParts, width: number, below: PaneBelow): Frame {
  const pane = below.lines;
  const { context, state, size, glyphs, hiding } = parts;
  const hidden = hidesAnswer(hiding, context.interview, state.at);
  const question = questionAt(context, state.at);
  const topic = styled(wrapText(topicWords(context, state, width), width), { dim: true });
  const common = !tellsOfHidden(context.interview, question);
  const hide = common ? (text: string) => text : hideOf(hiding);
  const ask = styled(wrapText(hide(question.ask), width), { bold: true, common });
  const hint = styled(wrapText(hide(question.hint), width), { common });
  const why = whyNowWords(state).flatMap((says) => styled(wrapText(says, width), { dim: true }));
  const rowsHere = {
    rows: rowsOf(context, state),
    state,
    question,
    width,
    hidden,
    unseen: hiding?.unseen,
  };
  const message = messageLines(state, width);
  const foot = footLines(parts, question, width);
  const loose = rowLines(rowsHere);
  const around = [topic, ask, hint, why, message, pane.slice(0, below.keep), foot, loose.lines];
  // The blank line among the rows goes before anything that can be read.
  const tight = around.reduce((sum, one) => sum + one.length, 0) > frameHeight(size.rows);
  const block = tight ? rowLines({ ...rowsHere, tight }) : loose;

  const gap = 1;
  const heights = fitParts(
    [
      { name: 'topic', height: topic.length },
      { name: 'gap-topic', height: gap },
      { name: 'ask', height: ask.length },
      { name: 'hint', height: hint.length },
      { name: 'why', height: why.length },
      { name: 'gap-rows', height: gap },
      { name: 'rows', height: block.lines.length },
      { name: 'gap-message', height: message.length > 0 ? gap : 0 },
      { name: 'message', height: message.length },
      { name: 'gap-pane', height: pane.length > 0 ? gap : 0 },
      { name: 'pane', height: pane.length },
      { name: 'gap-foot', height: gap },
      { name: 'foot', height: foot.length },
    ],
    frameHeight(size.rows),
    cutOrder(block.own, below.keep),
  );
  const tall = (name: string) => heights.get(name)!;
  const blank = (name: string): Line[] => (tall(name) > 0 ? [[]] : []);
  const rows = windowLines({ ...block, height: tall('rows'), width, glyphs });
  const head = [
    ...cutLines(topic, tall('topic'), glyphs.cut),
    ...blank('gap-topic'),
    ...cutLines(ask, tall('ask'), glyphs.cut),
    ...cutLines(hint, tall('hint'), glyphs.cut),
    ...cutLines(why, tall('why'), glyphs.cut),
    ...blank('gap-rows'),
  ];
  const lines = [
    ...head,
    ...rows.lines,
    ...blank('gap-message'),
    ...cutLines(message, tall('message'), glyphs.cut),
    ...blank('gap-pane'),
    ...cutPane(pane, tall('pane'), glyphs.cut),
    ...blank('gap-foot'),
    ...footWithin(parts, question, { width, height: tall('foot') }),
  ];
  const cursor =
    block.cursorX === null ? null : { x: block.cursorX, y: head.length + block.from - rows.start };
  return { lines, cursor, maxScroll: 0, page: 1 };
}

/** What is left of the plan so far: a line that ends with a whole sentence stays whole. */
function cutPane(pane: readonly Line[], height: number, mark: string): readonly Line[] {
  const kept = pane.slice(0, height);
  const isWhole = kept.at(-1)?.at(-1)?.text.endsWith('.') === true;
  return isWhole ? kept : cutLines(pane, height, mark);
}

/** Where we are, and what is left where that costs no line of its own. */
function topicWords(context: Context, state: State, width: number): string {
  const [place, left] = [placeWords(context, state), leftWords(context, state)];
  const both = `${place} (${left})`;
  return left === '' || widthOf(both) > width ? place : both;
}

/**
 * What is given up first when the window is short: how long the plan lasts and what else it says, blank lines, rows that can be
 * scrolled to, what the plan leaves out, why now. The question goes last.
 */
function cutOrder(own: number, keep: number): CutRule[] {
  return [
    ['pane', keep],
    ['gap-message', 0],
    ['gap-topic', 0],
    ['gap-pane', 0],
    ['gap-foot', 0],
    ['gap-rows', 0],
    ['rows', Math.max(6, own + 1)],
    ['pane', 2],
    ['pane', 0],
    ['why', 0],
    ['rows', 6],
    ['topic', 0],
    ['rows', 4],
    ['foot', 2],
    ['hint', 1],
    ['message', 3],
    ['rows', 3],
    ['foot', 1],
    ['rows', 2],
    ['message', 2],
    ['hint', 0],
    ['message', 1],
    ['rows', 1],
    ['ask', 1],
  ];
}
