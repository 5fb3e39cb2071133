import type { Knob } from '../../../interview/what-if/knobs';
import { movedKnobs, placeOfKnob, type WhatIf } from '../../../interview/what-if/what-if-state';
import type { SaidChanges } from '../../../plan/changes/said-changes';
import { COLUMNS_FROM, compareLines } from '../../compare-lines';
import { footItems } from '../foot-items';
import { type Frame, frameHeight } from '../frame';
import type { Glyphs } from '../glyphs';
import { withHidingKeys } from '../hiding';
import { type Line, shorten, styled, wrapText } from '../line';
import type { Size } from '../watch-size';

/** What is known of what is tried: its sentences, that it is worked out, that there is none, or that the sums failed. */
export type WhatIfSaid = SaidChanges | 'working' | 'no-size' | 'failed';

export interface WhatIfParts {
  readonly name: string;
  readonly state: WhatIf;
  /** What was found last, and whether that is of what stands there now. */
  readonly said: WhatIfSaid;
  readonly isCurrent: boolean;
  readonly size: Size;
  readonly glyphs: Glyphs;
  /** Others see the screen, and what is hidden on it may be open just now. */
  readonly shared?: { readonly open: boolean } | undefined;
}

export const WHAT_IF = {
  working: 'Working out the figures ...',
  'no-size': 'What is advised comes in no such size here.',
  failed: 'No figures just now. Your answers and your plan are as they were.',
} as const;

const SIDES = { before: 'Now', after: 'What if' };
const WIDEST = 100;
/** From so many lines on every knob is seen; below it only the one marked. */
const ALL_KNOBS_FROM = 18;
/** In a narrow one both plans stand one below the other and need the room. */
const ALL_KNOBS_NARROW_FROM = 30;
const PLACE_FROM = 10;

/** What if, on the window: what can be moved, both plans side by side, the keys. Pure; no taller than the window. */
export function whatIfFrame(parts: WhatIfParts): Frame {
  const { state, size, name, glyphs } = parts;
  const height = frameHeight(size.rows);
  const width = Math.min(size.columns, WIDEST);
  const columns = size.columns >= COLUMNS_FROM;
  const roomy = height >= (columns ? ALL_KNOBS_FROM : ALL_KNOBS_NARROW_FROM);
  const knobs = roomy
    ? state.knobs.flatMap((knob, i) => knobLines(parts, knob, i === state.at, width))
    : oneKnob(parts, width);
  const foot = footItems(withHidingKeys(FOOT, parts.shared), {
    width: size.columns,
    height: Math.max(1, Math.floor(height / 4)),
  });
  const says = state.says === null ? [] : wrapText(state.says, width);
  const message = styled(says.slice(0, roomy ? says.length : 2), { tone: 'caution' });
  const gap = roomy ? 1 : 0;
  // In a low window the figures need the line that says where in them one is.
  const place = height >= PLACE_FROM ? 1 : 0;
  const page = Math.max(1, height - 1 - place - gap - knobs.length - message.length - foot.length);
  const body = bodyLines(parts, width);
  const maxScroll = Math.max(0, body.length - page);
  const top = Math.min(state.scroll, maxScroll);
  const seen = body.slice(top, top + page);
  const lines: Line[] = [
    [
      {
        text: shorten(`What if: ${name}. Nothing is written.`, size.columns, glyphs.cut),
        bold: true,
      },
    ],
    ...knobs,
    ...(gap > 0 ? [[]] : []),
    ...seen.map(asLine),
    ...Array.from({ length: page - seen.length }, () => []),
    ...(place > 0 ? [[{ text: placeLine(top, seen.length, body.length), dim: true }]] : []),
    ...message,
    ...foot,
  ];
  return { lines: lines.slice(0, height), cursor: null, maxScroll, page };
}

const FOOT = [
  'Left Right move it',
  'Up Down choose',
  'Page Down more',
  'Enter keep: asks it in full',
  'Backspace as now',
  'Ctrl+S leave',
  'Esc plan',
];

/** The mark, what it is called, where it stands, and where it stands now. */
function knobLines(
  { state, glyphs }: WhatIfParts,
  knob: Knob,
  here: boolean,
  width: number,
): Line[] {
  const place = placeOfKnob(state, knob);
  const said = knob.places[place]!.said;
  const ways = here ? `< ${said} >` : said;
  const now = place === knob.now ? '' : ` (now ${knob.places[knob.now]!.said})`;
  const text = `${here ? '> ' : '  '}${knob.says}: ${ways}${now}`;
  if (!here) return [[{ text: shorten(text, width, glyphs.cut) }]];
  return wrapText(text, width).map((line) => [{ text: line, bold: true, tone: 'accent' as const }]);
}

/** The one marked, and which of how many it is, in two lines at most. */
function oneKnob(parts: WhatIfParts, width: number): Line[] {
  const { state } = parts;
  const knob = state.knobs[state.at]!;
  const says = `${state.at + 1} of ${state.knobs.length}. ${knob.says}`;
  return knobLines(parts, { ...knob, says }, true, width).slice(0, 2);
}

function bodyLines({ state, said, isCurrent }: WhatIfParts, width: number): string[] {
  if (typeof said === 'string') return wrapText(WHAT_IF[said], width);
  const waiting = isCurrent ? [] : wrapText(WHAT_IF.working, width);
  if (movedKnobs(state).length === 0 && isCurrent) return planNow(said, width);
  const stand = width < COLUMNS_FROM ? 'stacked' : 'columns';
  return [...waiting, ...compareLines(said, { width, stand, sides: SIDES, brief: true })];
}

/** Before anything is moved: the plan in the same quick figures. */
function planNow({ rows, basis }: SaidChanges, width: number): string[] {
  return [
    ...rows.flatMap(({ name, before }) => wrapText(`${name}: ${before}`, width)),
    '',
    ...wrapText(basis, width),
  ];
}

/** An empty text would take no line at all. */
export const asLine = (text: string): Line => (text === '' ? [] : [{ text }]);

function placeLine(top: number, seen: number, all: number): string {
  if (seen >= all) return '';
  return `Lines ${top + 1} to ${top + seen} of ${all}${top + seen < all ? ', more below' : ', the end'}`;
}
