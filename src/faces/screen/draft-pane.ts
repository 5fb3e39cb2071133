import type { Hide } from '../../interview/hide-words';
import { SUMS_FAILED } from '../draft-safely';
import { NO_SUMS, sumWords } from '../draft-words';
import { glanceWords, placeRead } from '../glance-words';
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

/** The same in a few lines, for below the question. */
export function paneBelow(
  { draft, changed, hide = asItIs }: Pane,
  width: number,
  glyphs: Glyphs,
): Line[] {
  if (draft === null) return [];
  if (draft === SUMS_FAILED) return styled(wrapText(NO_SUMS, width));
  const lines = draft.lines.flatMap((says) => wrapText(hide(says), width));
  // Above the question it says how many are left to a first plan.
  if (draft.glance.route === null) return styled([...placeRead(draft.glance), ...lines]);
  const [first = '', ...rest] = glanceWords({ ...draft.glance, nearTown: null }).map(hide);
  const short = rest.map((says) => shorten(says, width, glyphs.cut));
  return styled([
    ...wrapText(`Your plan so far: ${first}`, width),
    ...flow(short, width, ' '),
    ...(changed === null ? [] : [shorten(hide(changed), width, glyphs.cut)]),
    ...lines,
  ]);
}
