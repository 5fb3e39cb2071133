import { stillOpen } from '../interview/questions/relevant';
import type { Context, State } from '../interview/state';

/** Words above the list of answers, in both faces. */
const CHECK_TITLE = 'Check your answers, then write the plan';
const CHANGE_TITLE = 'Choose an answer to change; the plan is laid beside it';

/** After a plan its answers are changed one by one. */
export const checkTitle = ({ changing }: Pick<State, 'changing'>): string =>
  changing === null ? CHECK_TITLE : CHANGE_TITLE;
const CHECK_HINT = 'Choose a line to change it. A question mark stands where the answer is open.';

/** What the list is for, and how many questions a plan written now would take as "not sure". */
export function checkHint(context: Context, { answers }: State): string {
  const left = openWords(context, answers);
  return left === null ? CHECK_HINT : `${CHECK_HINT} ${left}`;
}

/** How many questions are still to be answered, and what the plan does about them; null when none is. */
export function openWords(context: Context, answers: State['answers']): string | null {
  const left = stillOpen(context, answers).length;
  if (left === 0) return null;
  const open = left === 1 ? '1 question is' : `About ${left} questions are`;
  return `${open} not answered yet; a plan written now counts them as "not sure".`;
}
