import { actNowTexts, actNowTitle } from '../../act-now-texts';
import type { Frame, FrameParts } from '../frame';
import { type Line, styled, wrapText } from '../line';
import { labelLines } from '../row-lines';
import { readingFrame } from './reading';

/** What to do at once, one instruction a line. */
export function actNowFrame(parts: FrameParts, width: number): Frame {
  const { context, state } = parts;
  const text = actNowTexts(context.interview, state).flatMap(({ title, lines }, i): Line[] => [
    ...(i > 0 ? [[]] : []),
    ...(title === null ? [] : styled(wrapText(title, width), { bold: true })),
    ...lines.flatMap((line) => labelLines('- ', line, false, width)),
  ]);
  return readingFrame(parts, width, { title: actNowTitle(state), text });
}
