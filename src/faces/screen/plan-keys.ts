import type { Key } from '../../interview/key';

/** What a key means to somebody who reads the plan. */
export type PlanKey = 'leave' | 'ask-next' | 'next' | 'stay' | { readonly scroll: number };

/** `asking`: the question whether to begin with another home stands there. */
export function planKey(key: Key, asking: boolean, page: number): PlanKey {
  const letter = key.name === 'text' && key.pasted !== true ? key.text.toLowerCase() : '';
  if (key.name === 'ctrl-c' || key.name === 'ctrl-s') return 'leave';
  // Nothing but the letter named begins a new home, and anything that moves comes back.
  if (asking) return letter === 'y' ? 'next' : 'stay';
  if (letter === 'n') return 'ask-next';
  if (letter === 'q' || key.name === 'enter' || key.name === 'escape') return 'leave';
  return { scroll: steps(key, page) };
}

function steps(key: Key, page: number): number {
  switch (key.name) {
    case 'up':
      return -1;
    case 'down':
      return 1;
    case 'page-up':
      return -page;
    case 'page-down':
      return page;
    case 'home':
      return Number.NEGATIVE_INFINITY;
    case 'end':
      return Number.POSITIVE_INFINITY;
    case 'text':
      return key.text === ' ' ? page : 0;
    default:
      return 0;
  }
}
