import { words } from '../../../interview/words';
import { labelWords } from '../../label-words';
import type { Frame, FrameParts } from '../frame';
import { labelLines } from '../row-lines';
import { readingFrame } from './reading';

/** What a label was read as, to be confirmed before it counts. */
export function labelFrame(parts: FrameParts, width: number): Frame {
  const says = labelWords(parts.context, parts.state);
  const text = says.flatMap((line) => labelLines('- ', line, false, width));
  return readingFrame(parts, width, { title: words.labelAsk, text });
}
