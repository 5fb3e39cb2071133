import { restsOn } from './questions/rests-on';
import type { Context, State } from './state';

/** What a key can belong to: a question, or one of the screens above it. */
export function stepOf({ view, at }: Pick<State, 'view' | 'at'>): string {
  return `${view} ${at}`;
}

/**
 * Whether this question was certain to come after that one: only along the opening, where neither it, nor its choices,
 * nor what was passed over on the way waits for the answer just given.
 */
export function isCertainNext({ interview }: Context, before: State, after: State): boolean {
  if (before.view !== 'ask' || after.view !== 'ask') return false;
  const { opening, questions } = interview;
  const [from, to] = [opening.indexOf(before.at), opening.indexOf(after.at)];
  if (from < 0 || to <= from) return false;
  const between = questions.filter(({ id }) => opening.slice(from + 1, to + 1).includes(id));
  return !between.some(({ when, choices }) => restsOn([when, choices], before.at));
}
