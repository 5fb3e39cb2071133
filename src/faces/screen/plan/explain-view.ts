import type { Key } from '../../../interview/keys/key';
import { footItems } from '../foot-items';
import { type Frame, frameHeight } from '../frame';
import type { Glyphs } from '../glyphs';
import { withHidingKeys } from '../hiding';
import { type Line, shorten } from '../line';
import { rowAfterKey } from '../list-row';
import { labelLines } from '../row-lines';
import { scrollLines } from '../scroll-lines';
import type { Size } from '../watch-size';
import { windowLines } from '../window-lines';
import type { Beside, BesideView } from './read-plan';

/** A figure of the plan, and how it was worked out. */
export interface ExplainedFigure {
  /** What it is and what it comes to, in one line. */
  readonly says: string;
  /** Its arithmetic, no line wider than `columns`. */
  readonly lines: (columns: number) => readonly string[];
}

interface State {
  /** Line marked in the list. */
  readonly row: number;
  /** The arithmetic of that line stands there, from this line on; null for the list. */
  readonly scroll: number | null;
}

/** Nothing here is easier to read for being wider. */
const WIDEST = 80;

/** The key over the plan that shows how its figures were worked out. */
export function explainKey(figures: readonly ExplainedFigure[], glyphs: Glyphs): Beside {
  return { letter: 'e', says: 'explain a figure', open: () => explainView(figures, glyphs) };
}

/** The figures of the plan; Enter shows how one was worked out, Esc goes back. */
export function explainView(figures: readonly ExplainedFigure[], glyphs: Glyphs): BesideView {
  let state: State = { row: 0, scroll: null };
  let page = 1;
  return {
    step: () => (state.scroll === null ? 'figures' : `figure ${state.row}`),
    frame: (size, shared) => {
      const frame = frameOf(figures, state, { size, glyphs, shared });
      page = frame.page;
      if (state.scroll !== null) {
        state = { ...state, scroll: Math.min(state.scroll, frame.maxScroll) };
      }
      return frame;
    },
    take: (key) => {
      if (key.name === 'escape' && state.scroll === null) return 'back';
      state =
        state.scroll === null ? inList(state, key, figures.length) : inFigure(state, key, page);
      return 'stay';
    },
  };
}

function inList(state: State, key: Key, count: number): State {
  const row = rowAfterKey(key, state.row, count);
  if (row !== null) return { ...state, row };
  return key.name === 'enter' || key.name === 'right' ? { ...state, scroll: 0 } : state;
}

function inFigure(state: State, key: Key, page: number): State {
  const to = (scroll: number): State => ({ ...state, scroll: Math.max(0, scroll) });
  const scroll = state.scroll ?? 0;
  switch (key.name) {
    case 'escape':
    case 'left':
      return { ...state, scroll: null };
    case 'up':
      return to(scroll - 1);
    case 'down':
      return to(scroll + 1);
    case 'page-up':
      return to(scroll - page);
    case 'page-down':
      return to(scroll + page);
    case 'home':
      return to(0);
    case 'end':
      return to(Number.MAX_SAFE_INTEGER);
    default:
      return key.name === 'text' && key.text === ' ' ? to(scroll + page) : state;
  }
}

interface Around {
  readonly size: Size;
  readonly glyphs: Glyphs;
  /** Others see the screen, and what is hidden on it may be open just now. */
  readonly shared: { readonly open: boolean } | undefined;
}

function frameOf(
  figures: readonly ExplainedFigure[],
  { row, scroll }: State,
  { size, glyphs, shared }: Around,
): Frame {
  const width = Math.min(size.columns, WIDEST);
  const total = frameHeight(size.rows);
  const inside = scroll !== null;
  const foot = footItems(withHidingKeys(inside ? READING : CHOOSING, shared), {
    width: size.columns,
    height: Math.max(1, Math.floor(total / 4)),
  });
  const title = inside ? 'How this figure was worked out' : 'Figures of the plan';
  const height = Math.max(1, total - foot.length - 2);
  const shown = inside
    ? arithmeticOf(figures[row]!, { width, height, scroll })
    : { lines: listOf(figures, { row, width, height, glyphs }), place: '', maxScroll: 0 };
  return {
    lines: [
      [{ text: shorten(title, size.columns, glyphs.cut), bold: true }],
      ...shown.lines,
      [{ text: shorten(shown.place, size.columns, glyphs.cut), dim: true }],
      ...foot,
    ],
    cursor: null,
    maxScroll: shown.maxScroll,
    page: Math.max(1, height - 1),
  };
}

function arithmeticOf(
  figure: ExplainedFigure,
  { width, height, scroll }: { width: number; height: number; scroll: number },
) {
  const lines: Line[] = figure.lines(width).map((text) => [{ text }]);
  const { lines: shown, place, maxScroll } = scrollLines({ lines, height, scroll });
  return { lines: shown, place: place ?? '', maxScroll };
}

function listOf(
  figures: readonly ExplainedFigure[],
  given: { row: number; width: number; height: number; glyphs: Glyphs },
): readonly Line[] {
  const lines: Line[] = [];
  const starts: number[] = [];
  let [from, to] = [0, 0];
  figures.forEach(({ says }, i) => {
    starts.push(lines.length);
    if (i === given.row) from = lines.length;
    lines.push(...labelLines('', says, i === given.row, given.width));
    if (i === given.row) to = lines.length - 1;
  });
  return windowLines({ ...given, lines, starts, from, to }).lines;
}

const CHOOSING = [
  'Up Down choose',
  'Enter work it out',
  'Home End first, last',
  'Ctrl+S leave',
  'Esc back to the plan',
];
const READING = [
  'Up Down Space read on',
  'Page Up Page Down',
  'Home End begin, end',
  'Ctrl+S leave',
  'Esc back to the figures',
];
