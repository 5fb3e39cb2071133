import { flow } from './foot';
import { type Frame, frameHeight } from './frame';
import { shorten } from './line';
import { scrollLines } from './scroll-lines';
import type { Size } from './watch-size';

export interface PlanView {
  readonly scroll: number;
  /** The question whether to begin with another home stands at the foot. */
  readonly asking: boolean;
}

/** The plan in a window: its lines, where we are, and the keys. */
export function planFrame(
  text: readonly string[],
  size: Size,
  { scroll, asking }: PlanView,
): Frame {
  const foot = flow(asking ? ASK_NEXT : KEYS, size.columns, '   ');
  const height = frameHeight(size.rows) - foot.length - 1;
  const lines = text.map((line) => [{ text: line, painted: true }]);
  const { lines: shown, place, maxScroll } = scrollLines({ lines, height, scroll });
  return {
    lines: [
      ...shown,
      [{ text: shorten(place ?? '', size.columns, ''), dim: true }],
      ...foot.map((text) => [asking ? { text, bold: true } : { text, dim: true }]),
    ],
    cursor: null,
    maxScroll,
    page: shown.length,
  };
}

const KEYS = [
  'Up Down Space read on',
  'Enter or Esc leave',
  'N next home',
  '(the plan stays in its files)',
];

const ASK_NEXT = ['Leave this plan and begin', 'with another home?', 'Y begin', 'Esc back to it'];
