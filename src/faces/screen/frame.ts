import type { Context, State } from '../../interview/state';
import type { Weighed } from './draft-pane';
import type { Glyphs } from './glyphs';
import type { Hiding } from './hiding';
import type { Line } from './line';
import type { WhatIfSaid } from './views/what-if';
import type { Size } from './watch-size';

/** Everything a frame is made from. */
export interface FrameParts {
  readonly context: Context;
  readonly state: State;
  /** Null until the first sums are there. */
  readonly draft: Weighed;
  /** What the last answer changed in the plan. */
  readonly changed?: string | null;
  /** Where an answer was changed after a plan: what that changes. */
  readonly compared?: WhatIfSaid;
  readonly size: Size;
  readonly glyphs: Glyphs;
  /** The screen is shared with others. */
  readonly hiding?: Hiding;
}

/** A whole screen as data. At most two lines shorter than the window, no line wider than it. */
export interface Frame {
  readonly lines: readonly Line[];
  /** Where the terminal's own cursor stands, or null to hide it. */
  readonly cursor: { readonly x: number; readonly y: number } | null;
  /** How far the text of this view can be scrolled. */
  readonly maxScroll: number;
  /** Lines of that text in sight. */
  readonly page: number;
}

/** Width of the text column: no wider than is easy to read. */
export function textWidth(columns: number): number {
  return Math.min(columns, 80);
}

/** Lines a frame may have: a frame as tall as the window makes the terminal scroll. */
export function frameHeight(rows: number): number {
  return Math.max(3, rows - 2);
}
