import { WELCOME, WELCOME_TITLE } from '../../welcome-words';
import { type Frame, type FrameParts, frameHeight } from '../frame';
import { type Line, styled, wrapText } from '../line';
import { readingFrame } from './reading';

/** Lines around the text: the title, the place in it, the line to choose, the keys. */
const AROUND = 4;

/** What the talk is, before its first question. Blank lines go before words do. */
export function welcomeFrame(parts: FrameParts, width: number): Frame {
  const paragraphs = WELCOME.map((one) => styled(wrapText(one, width)));
  const title = wrapText(WELCOME_TITLE, width);
  const height = paragraphs.flat().length + paragraphs.length + title.length + AROUND;
  const apart = height <= frameHeight(parts.size.rows);
  const text = paragraphs.flatMap((lines, i): Line[] => [
    ...(apart && i > 0 ? [[]] : []),
    ...lines,
  ]);
  return readingFrame(parts, width, { title: WELCOME_TITLE, text });
}
