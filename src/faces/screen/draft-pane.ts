import type { Hide } from '../../interview/hide-words';
import { SUMS_FAILED } from '../draft-safely';
import { NO_SUMS, sumWords } from '../draft-words';
import {
  type GlancePart,
  type GlanceSentence,
  glanceSentences,
  glanceWords,
  placeRead,
} from '../glance-words';
import type { ShownDraft } from '../shown-draft';
import { flow } from './foot-items';
import type { Glyphs } from './glyphs';
import { type Line, shorten, styled, wrapText } from './line';

/** The plan so far beside the question: not made yet, made, or at fault. */
export type Weighed = ShownDraft | null | typeof SUMS_FAILED;

export interface Pane {
  readonly draft: Weighed;
  /** What the last answer changed. */
  readonly changed: string | null;
  /** Leaves out what is private. */
  readonly hide?: Hide;
}

const asItIs: Hide = (text) => text;

/** What the answers come to, for a column beside the question. */
export function paneBeside({ draft, changed, hide = asItIs }: Pane, width: number): Line[] {
  const title: Line = [{ text: 'Your plan so far', bold: true }];
  if (draft === null) return [title];
  if (draft === SUMS_FAILED) return [title, [], ...styled(wrapText(NO_SUMS, width))];
  const sums = draft.glance.route === null ? [] : sumWords(draft);
  const last = changed === null ? [] : [changed];
  const groups = [...glanceWords(draft.glance), ...last, ...draft.lines, ...sums];
  return [title, ...groups.flatMap((says) => [[], ...styled(wrapText(hide(says), width))])];
}

/** The plan so far below a question, what counts most first. */
export interface PaneBelow {
  readonly lines: readonly Line[];
  /** So many of the first lines go last: what is advised, for how much, and what it leaves out. */
  readonly keep: number;
}

export const NO_PANE: PaneBelow = { lines: [], keep: 0 };

/** What stands first below a question, where often two lines are all there is room for. */
const firstBelow: readonly GlancePart[] = ['life', 'route', 'price', 'leaves-out'];

/** The same in a few lines, for below the question. */
export function paneBelow(
  { draft, changed, hide = asItIs }: Pane,
  width: number,
  glyphs: Glyphs,
): PaneBelow {
  if (draft === null) return NO_PANE;
  if (draft === SUMS_FAILED) return whole(styled(wrapText(NO_SUMS, width)));
  const lines = draft.lines.flatMap((says) => wrapText(hide(says), width));
  // Above the question it says how many are left to a first plan.
  if (draft.glance.route === null) return whole(styled([...placeRead(draft.glance), ...lines]));
  const sentences = glanceSentences({ ...draft.glance, nearTown: null });
  const isFirst = ({ part }: GlanceSentence) => firstBelow.includes(part);
  const says = (all: readonly GlanceSentence[]) =>
    all.map((one) => shorten(hide(one.says), width, glyphs.cut));
  const [head, ...first] = sentences.filter(isFirst);
  const begun = wrapText(`Your plan so far: ${hide(head!.says)}`, width);
  const most = [...begun.slice(0, -1), ...flow([begun.at(-1)!, ...says(first)], width, ' ')];
  const rest = says(sentences.filter((one) => !isFirst(one)));
  const all = [
    ...most.slice(0, -1),
    ...flow([most.at(-1)!, ...rest], width, ' '),
    ...(changed === null ? [] : [shorten(hide(changed), width, glyphs.cut)]),
    ...lines,
  ];
  return { lines: styled(all), keep: Math.min(most.length, MOST_KEPT) };
}

/** More lines than this are not kept against the rows of a question. */
const MOST_KEPT = 4;

const whole = (lines: readonly Line[]): PaneBelow => ({ lines, keep: Math.min(2, lines.length) });
