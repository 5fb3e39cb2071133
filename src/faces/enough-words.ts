import type { State } from '../interview/state';

export const WAITING = 'One moment: looking for the question that could change your plan most.';

/** That nothing still open would change what to buy, and how many answers would sharpen it. */
export function enoughTitle({ next }: State): string {
  const sharpen = next?.code === 'enough' ? next.sharpen : 0;
  const nothing = 'Nothing you could still answer would change what to buy.';
  if (sharpen === 0) return nothing;
  return `${nothing} ${sharpen} ${sharpen === 1 ? 'answer' : 'answers'} would sharpen the figures.`;
}
