import { footItems } from '../foot-items';
import { frameHeight } from '../frame';
import type { Glyphs } from '../glyphs';
import { type Line, styled, wrapText } from '../line';
import { labelLines } from '../row-lines';
import type { Size } from '../watch-size';
import { lineOf } from './passage';
import { ASKED, allKeys, type BesideKey, planFoot } from './plan-foot';
import { type Shown, sectionAt } from './plan-keys';
import type { LaidOut } from './plan-lines';
import type { PlanState } from './plan-state';

export interface PlanParts {
  /** Name of the home. */
  readonly name: string;
  /** The plan, laid out for the columns its text has. */
  readonly plan: LaidOut;
  readonly state: PlanState;
  readonly size: Size;
  readonly glyphs: Glyphs;
  readonly beside: readonly BesideKey[];
  /** A screen that others see, and whether it is open just now. */
  readonly shared?: { readonly open: boolean } | null;
}

/** From this width on the list of sections stands beside the text. */
const BESIDE_FROM = 120;
export const PANE = 38;

export const hasPane = ({ columns }: Size) => columns >= BESIDE_FROM;

/** Columns the text of the plan has. */
export function planColumns(size: Size): number {
  return hasPane(size) ? size.columns - PANE - 3 : size.columns;
}

/** What stands around the text, and how much of the text that leaves in sight. */
export interface Measured {
  readonly shown: Shown;
  /** A blank line below the title, where there is room. */
  readonly gap: number;
  /** What was said about the last key, or asked. */
  readonly message: readonly Line[];
  readonly foot: readonly Line[];
}

/** All keys, as lines of this width. */
export function keyLines(given: Parameters<typeof allKeys>[0], width: number): Line[] {
  return allKeys(given).flatMap((one) => labelLines('- ', one, false, width));
}

/** From so many lines on a blank one stands below the title. */
const ROOMY = 16;

/** Title and place take a line each, the keys a quarter of the window at most. */
export function measurePlan({ plan, state, size, beside, shared }: PlanParts): Measured {
  const width = size.columns;
  const height = frameHeight(size.rows);
  const asked = state.view === 'leaving' || state.view === 'homes' ? ASKED[state.view] : null;
  const message = [
    ...(state.says === null ? [] : styled(wrapText(state.says, width), { tone: 'caution' })),
    ...(asked === null ? [] : styled(wrapText(asked, width), { bold: true })),
  ];
  const wanted = lineOf(plan, state.passage);
  const atFront = sectionAt(plan, wanted) === 0;
  const gap = height >= ROOMY ? 1 : 0;
  const field = state.view === 'find' ? 1 : 0;
  // Title, place and a line of the plan stand in the lowest window too, whatever is asked there.
  const spare = height - 3 - gap - field - message.length;
  const foot = footItems(planFoot(state, { atFront, beside, shared }), {
    width,
    height: Math.max(1, Math.min(spare, Math.floor(height / 4))),
  });
  const page = Math.max(1, height - 2 - gap - field - message.length - foot.length);
  // Also the last section can stand at the top.
  const lastHead = plan.sections.at(-1)?.line ?? 0;
  const maxScroll = plan.lines.length <= page ? 0 : Math.max(plan.lines.length - page, lastHead);
  const keys = state.view === 'keys' ? keyLines({ beside, shared }, planColumns(size)) : [];
  const keysScroll = Math.max(0, keys.length - page);
  const shown = { plan, top: Math.min(wanted, maxScroll), page, maxScroll, keysScroll };
  return { shown, gap, message, foot };
}
