import type { Answer, Answers } from '../interview/answers';
import { sameAnswer } from './edit-home';

/** Two sets of changes to one home, put together. */
export interface Merged {
  readonly answers: Answers;
  /** Questions that both sides answered anew, and not alike: left out of `answers`. */
  readonly both: readonly string[];
}

/** Both sides' answers where each changed what the other left alone. `base` is what both began from. */
export function mergeAnswers(base: Answers, ours: Answers, theirs: Answers): Merged {
  const answers: Record<string, Answer> = {};
  const both: string[] = [];
  for (const id of new Set([...Object.keys(ours), ...Object.keys(theirs), ...Object.keys(base)])) {
    const weChanged = !sameAnswer(base[id], ours[id]);
    const theyChanged = !sameAnswer(base[id], theirs[id]);
    if (weChanged && theyChanged && !sameAnswer(ours[id], theirs[id])) both.push(id);
    const taken = weChanged ? ours[id] : theirs[id];
    if (taken !== undefined && !both.includes(id)) answers[id] = taken;
  }
  return { answers, both };
}
