import { words } from '../../../interview/words';
import { COLUMNS_FROM, compareLines } from '../../compare-lines';
import type { Frame, FrameParts } from '../frame';
import { hideOf } from '../hiding';
import { wrapText } from '../line';
import { readingFrame } from './reading';
import { asLine, WHAT_IF } from './what-if';

/** The plan as it was and as an answer just changed makes it, side by side. */
export function compareFrame(parts: FrameParts, width: number): Frame {
  const said = parts.compared ?? 'working';
  const stand = width < COLUMNS_FROM ? 'stacked' : 'columns';
  const sides = { before: 'Before', after: 'After' };
  const lines =
    typeof said === 'string'
      ? wrapText(WHAT_IF[said], width)
      : compareLines(said, { width, stand, sides, brief: true });
  const hide = hideOf(parts.hiding);
  return readingFrame(parts, width, {
    title: words.compareTitle,
    text: lines.map((line) => asLine(hide(line))),
  });
}
