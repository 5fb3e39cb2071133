import { planSoFar, planSoFarTitle } from '../../plan-so-far';
import type { Frame, FrameParts } from '../frame';
import { hideOf } from '../hiding';
import { labelLines } from '../row-lines';
import { readingFrame } from './reading';

/** Where the opening ends, and where nothing open would change what to buy: the plan so far, and what can be done now. */
export function planSoFarFrame(parts: FrameParts, width: number): Frame {
  const { context, state, draft } = parts;
  const hide = hideOf(parts.hiding);
  const says = draft === null ? [] : planSoFar(context, state, draft);
  const text = says.flatMap((one) => labelLines('- ', hide(one), false, width));
  return readingFrame(parts, width, { title: planSoFarTitle(parts.context, state, draft), text });
}
