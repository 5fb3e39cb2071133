import { SUMS_FAILED } from '../../draft-safely';
import { NO_SUMS } from '../../draft-words';
import { FIRST_PLAN_TITLE, firstPlanWords } from '../../first-plan-words';
import type { Frame, FrameParts } from '../frame';
import { hideOf } from '../hiding';
import { labelLines } from '../row-lines';
import { readingFrame } from './reading';

/** Where the opening ends: the plan so far, and whether to go on. */
export function firstPlanFrame(parts: FrameParts, width: number): Frame {
  const { context, state, draft } = parts;
  const known = draft !== null && draft !== SUMS_FAILED;
  const says = known ? firstPlanWords(context, state, draft) : draft === null ? [] : [NO_SUMS];
  const hide = hideOf(parts.hiding);
  const text = says.flatMap((one) => labelLines('- ', hide(one), false, width));
  return readingFrame(parts, width, { title: FIRST_PLAN_TITLE, text });
}
