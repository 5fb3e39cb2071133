import { answersToReadBack } from '../../../interview/read-back';
import { words } from '../../../interview/words';
import type { Frame, FrameParts } from '../frame';
import { labelLines } from '../row-lines';
import { readingFrame } from './reading';

/** The answers that open the way to a generator, once more before the plan. */
export function readBackFrame(parts: FrameParts, width: number): Frame {
  const { context, state } = parts;
  const text = answersToReadBack(context, state.answers).flatMap(({ says, said }) =>
    labelLines('- ', `${says}: ${said}`, false, width),
  );
  return readingFrame(parts, width, { title: words.readBackTitle, text });
}
