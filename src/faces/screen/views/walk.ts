import { WALK_TITLE, walkHint, walkTexts } from '../../walk-texts';
import type { Frame, FrameParts } from '../frame';
import { type Line, styled, wrapText } from '../line';
import { labelLines } from '../row-lines';
import { readingFrame } from './reading';

/** What was left to look at, by place. */
export function walkFrame(parts: FrameParts, width: number): Frame {
  const { context, state } = parts;
  const stops = walkTexts(context, state).flatMap(({ title, lines }): Line[] => [
    ...styled(wrapText(title, width), { bold: true }),
    ...lines.flatMap((line) => labelLines('- ', line, false, width)),
  ]);
  const text = [...stops, [], ...styled(wrapText(walkHint(state), width))];
  return readingFrame(parts, width, { title: WALK_TITLE, text });
}
