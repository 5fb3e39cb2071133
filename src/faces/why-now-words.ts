import type { State } from '../interview/state';

/** One line on why this question is asked now; none for the written order. */
export function whyNowWords({ at, next, asksRest }: State): string[] {
  const found = next?.code === 'ask' && next.questionId === at && !asksRest;
  return found && next.why !== '' ? [`Why now: ${lowerFirst(next.why)}`] : [];
}

function lowerFirst(says: string): string {
  return says[0]!.toLowerCase() + says.slice(1);
}
