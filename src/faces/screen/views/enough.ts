import { SUMS_FAILED } from '../../draft-safely';
import { NO_SUMS } from '../../draft-words';
import { enoughTitle } from '../../enough-words';
import { glanceWords } from '../../glance-words';
import type { Frame, FrameParts } from '../frame';
import { hideOf } from '../hiding';
import { labelLines } from '../row-lines';
import { readingFrame } from './reading';

/** Nothing open would change what to buy: the plan so far, and what can be done now. */
export function enoughFrame(parts: FrameParts, width: number): Frame {
  const { state, draft } = parts;
  const says =
    draft === SUMS_FAILED
      ? [NO_SUMS]
      : draft === null
        ? []
        : [...glanceWords(draft.glance), ...draft.lines];
  const hide = hideOf(parts.hiding);
  const text = says.flatMap((one) => labelLines('- ', hide(one), false, width));
  return readingFrame(parts, width, { title: enoughTitle(state), text });
}
