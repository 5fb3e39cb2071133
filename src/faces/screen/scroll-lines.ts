import type { Line } from './line';

export interface Scrolled {
  readonly lines: readonly Line[];
  /** Where we are, in words; null when everything is in sight. */
  readonly place: string | null;
  readonly maxScroll: number;
}

export interface ScrollParts {
  readonly lines: readonly Line[];
  readonly height: number;
  readonly scroll: number;
}

/** The part of a long text that fits, from line `scroll` on. */
export function scrollLines({ lines, height, scroll }: ScrollParts): Scrolled {
  if (lines.length <= height) return { lines, place: null, maxScroll: 0 };
  const maxScroll = lines.length - height;
  const first = Math.min(maxScroll, Math.max(0, scroll));
  const last = first + height;
  return {
    lines: lines.slice(first, last),
    place: `Lines ${first + 1} to ${last} of ${lines.length}${last < lines.length ? ', more below' : ', the end'}`,
    maxScroll,
  };
}
