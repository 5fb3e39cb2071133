import { SOURCE, TONIGHT_HELP, TONIGHT_TITLE, tonightTexts } from '../../tonight-texts';
import type { Frame, FrameParts } from '../frame';
import { type Line, styled, wrapText } from '../line';
import { labelLines } from '../row-lines';
import { readingFrame } from './reading';

/** A page for tonight, part by part, with who says so. */
export function tonightFrame(parts: FrameParts, width: number): Frame {
  const { context, state } = parts;
  const text = tonightTexts(context.interview, state).flatMap(
    ({ title, lines, source }, i): Line[] => [
      ...(i > 0 ? [[]] : []),
      ...styled(wrapText(title, width), { bold: true }),
      ...lines.flatMap((line) => labelLines('- ', line, false, width)),
      ...styled(wrapText(`${SOURCE}: ${source}.`, width), { dim: true }),
    ],
  );
  return readingFrame(parts, width, { title: TONIGHT_TITLE, text });
}

/** What the page is for, until a key leads back to it. */
export function tonightHelpFrame(parts: FrameParts, width: number): Frame {
  const text = TONIGHT_HELP.flatMap((says, i): Line[] => [
    ...(i > 0 ? [[]] : []),
    ...styled(wrapText(says, width)),
  ]);
  return readingFrame(parts, width, { title: TONIGHT_TITLE, text });
}
