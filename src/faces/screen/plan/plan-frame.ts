import type { Frame } from '../frame';
import type { Glyphs } from '../glyphs';
import { type Line, lineWidth, shorten, takeWidth, widthOf } from '../line';
import { findIn, withHit } from './find-in-plan';
import { hasPane, keyLines, measurePlan, PANE, type PlanParts, planColumns } from './measure-plan';
import { type Shown, sectionAt } from './plan-keys';
import type { PlanState } from './plan-state';
import { sectionsList, sectionTitle } from './sections-list';

/** A plan on the window: where we are, its text or the list of its sections, and the keys. Pure. */
export function planFrame(parts: PlanParts): Frame {
  const { plan, state, size, glyphs } = parts;
  const { shown, gap, message, foot } = measurePlan(parts);
  const { top, page, maxScroll } = shown;
  const here = sectionAt(plan, top);
  const list = (width: number) =>
    sectionsList({
      plan,
      row: state.view === 'sections' ? state.row : here,
      live: state.view === 'sections',
      width,
      height: page,
      glyphs,
    });
  const inList = state.view === 'sections' && !hasPane(size);
  const text = inList ? list(size.columns) : bodyOf(parts, shown);
  const middle = hasPane(size)
    ? withPane(text, list(PANE), { width: planColumns(size), height: page, glyphs })
    : padded(text, page);
  const find = state.view === 'find' ? findLine(state, size.columns) : null;
  const lines: Line[] = [
    [{ text: shorten(headOf(parts, here), size.columns, glyphs.cut), bold: true }],
    ...(gap > 0 ? [[]] : []),
    ...middle,
    [{ text: shorten(placeOf(state, shown), size.columns, glyphs.cut), dim: true }],
    ...(find === null ? [] : [find.line]),
    ...message,
    ...foot,
  ];
  const cursor = find === null ? null : { x: find.x, y: 1 + gap + page + 1 };
  return { lines, cursor, maxScroll, page };
}

function headOf({ name, plan, state }: PlanParts, here: number): string {
  if (state.view === 'keys') return 'Keys of the plan';
  const title = `${sectionTitle(plan, here)}: plan for ${name}`;
  return state.view === 'sections' ? `Sections. You are in: ${title}` : title;
}

function bodyOf(parts: PlanParts, { plan, top, page, keysScroll }: Shown): Line[] {
  const { state, size } = parts;
  if (state.view === 'keys') {
    const from = Math.min(state.row, keysScroll);
    return keyLines(parts, planColumns(size)).slice(from, from + page);
  }
  const hits = state.view === 'found' ? findIn(plan.lines, state.sought) : [];
  const hit = hits[state.hit] ?? null;
  return plan.lines
    .slice(top, top + page)
    .map((line, i) => [{ text: withHit(line, top + i, hit), painted: true }]);
}

/** Where in the plan we are, or which hit this is. */
function placeOf(state: PlanState, { plan, top, page, keysScroll }: Shown): string {
  const { length } = plan.lines;
  if (state.view === 'keys') return keysScroll > state.row ? 'More below' : '';
  if (state.view === 'sections') return `${plan.sections.length + 1} sections`;
  const last = Math.min(length, top + page);
  if (state.view === 'found') {
    const count = findIn(plan.lines, state.sought).length;
    return `Hit ${state.hit + 1} of ${count} for "${state.sought}" (lines ${top + 1} to ${last} of ${length})`;
  }
  if (top === 0 && last === length) return '';
  return `Lines ${top + 1} to ${last} of ${length}${last < length ? ', more below' : ', the end'}`;
}

function findLine({ field }: PlanState, columns: number): { line: Line; x: number } {
  const lead = 'Find: [ ';
  const room = Math.max(4, Math.min(40, columns - lead.length - 2));
  const shown = takeWidth(field.text.slice(-room + 1), room);
  const pad = ' '.repeat(Math.max(0, room - widthOf(shown)));
  const x = lead.length + Math.min(room - 1, widthOf(shown));
  return { line: [{ text: lead }, { text: shown, field: true }, { text: `${pad} ]` }], x };
}

/** As many lines as the page has, so that what stands below keeps its place. */
function padded(lines: readonly Line[], height: number): Line[] {
  return Array.from({ length: height }, (_, i) => lines[i] ?? []);
}

function withPane(
  left: readonly Line[],
  right: readonly Line[],
  { width, height, glyphs }: { width: number; height: number; glyphs: Glyphs },
): Line[] {
  return padded(left, height).map((line, i) => {
    const space = ' '.repeat(Math.max(0, width - lineWidth(line)));
    return [...line, { text: `${space} ${glyphs.bar} `, dim: true }, ...(right[i] ?? [])];
  });
}
