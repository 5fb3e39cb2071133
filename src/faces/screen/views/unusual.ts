import { questionAt } from '../../../interview/questions/relevant';
import { words } from '../../../interview/words';
import type { Frame, FrameParts } from '../frame';
import { styled, wrapText } from '../line';
import { readingFrame } from './reading';

/** A number that few homes have is asked back once. */
export function unusualFrame(parts: FrameParts, width: number): Frame {
  const { context, state } = parts;
  const text = styled(wrapText(words.unusualAsk(state.unusual?.said ?? ''), width));
  return readingFrame(parts, width, {
    title: questionAt(context, state.at).ask,
    text,
  });
}
