import type { Context, State } from './state';

/** What a key can belong to: a question, or one of the screens above it. */
export function stepOf({ view, at }: Pick<State, 'view' | 'at'>): string {
  return `${view} ${at}`;
}

/** Whether this question was certain to come after that one: only where the opening is fixed. */
export function isCertainNext({ interview }: Context, before: State, after: State): boolean {
  if (before.view !== 'ask' || after.view !== 'ask') return false;
  const at = interview.opening.indexOf(before.at);
  return at >= 0 && interview.opening[at + 1] === after.at;
}
