import type { Answers } from './answers';
import { isOpened } from './go-on';
import { reduce } from './reduce';
import type { Context, State } from './state';

/**
 * The answers as Enter would leave them, where the face would then look for the next question; null else: in the opening, or where
 * what stands in the field is no answer.
 */
export function wouldAnswer(context: Context, state: State): Answers | null {
  if (state.view !== 'ask' || context.guided !== true || !isOpened(context, state.answers))
    return null;
  const then = reduce(context, state, { type: 'key', key: { name: 'enter' } });
  return then.view === 'wait' && then.answers !== state.answers ? then.answers : null;
}
