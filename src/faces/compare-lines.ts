import type { SaidChanges, SaidRow } from '../plan/changes/said-changes';
import { widthOf, wrapText } from './screen/line';

/** How two plans stand beside each other: in two columns, or one below the other where lines are short or read aloud. */
export type Stand = 'columns' | 'stacked';

/** What the two are called: "Now" and "Then", or the day of an older plan. */
export interface Sides {
  readonly before: string;
  readonly after: string;
}

/** From this width on both fit beside each other. */
export const COLUMNS_FROM = 64;
const NAME = 15;
const GAP = 2;
const SAME = 'the same';

export interface Layout {
  readonly width: number;
  readonly stand: Stand;
  readonly sides: Sides;
  /** What is the same stands below, once. */
  readonly brief?: boolean;
}

/** Two plans in sentences, as lines of at most `width` columns. */
export function compareLines(
  said: SaidChanges,
  { width, stand, sides, brief = false }: Layout,
): string[] {
  const shown = brief ? said.rows.filter(({ changed }) => changed) : said.rows;
  const same = brief ? said.rows.filter(({ changed }) => !changed) : [];
  const rows =
    shown.length > 0 && stand === 'columns'
      ? inColumns(shown, sides, width)
      : shown.flatMap((row) => stacked(row, sides, width));
  return [
    ...(said.nothing === null ? [] : [...wrapText(said.nothing, width), '']),
    ...rows,
    ...same.flatMap(({ name, before }) => wrapText(`${name}, ${SAME}: ${before}`, width)),
    ...listed('Cautions that come:', said.come, width),
    ...listed('Cautions that go:', said.go, width),
    '',
    ...wrapText(said.basis, width),
  ];
}

function inColumns(rows: readonly SaidRow[], { before, after }: Sides, width: number): string[] {
  const each = Math.floor((width - NAME - 2 * GAP) / 2);
  const line = (cells: readonly [string, string, string]): string =>
    [padTo(cells[0], NAME), padTo(cells[1], each), cells[2]].join(' '.repeat(GAP)).trimEnd();
  return [
    line(['', before, after]),
    ...rows.flatMap((row) => {
      const [left, right] = [row.before, row.changed ? row.after : SAME].map((text) =>
        wrapUnits(text, each),
      ) as [string[], string[]];
      return Array.from({ length: Math.max(left.length, right.length) }, (_, i) =>
        line([i === 0 ? row.name : '', left[i] ?? '', right[i] ?? '']),
      );
    }),
  ];
}

const padTo = (text: string, width: number) =>
  text + ' '.repeat(Math.max(0, width - widthOf(text)));

/** One below the other, each line saying which it is. */
function stacked(row: SaidRow, { before, after }: Sides, width: number): string[] {
  const said = row.changed
    ? [`${before}: ${row.before}`, `${after}: ${row.after}`]
    : [`${before} and ${after.toLowerCase()}: ${row.before}`];
  return [`${row.name}:`, ...said.flatMap((text) => indented(text, width))];
}

function listed(head: string, says: readonly string[], width: number): string[] {
  if (says.length === 0) return [];
  return [
    '',
    head,
    ...says.flatMap((one) =>
      wrapText(one, width - 2).map((text, i) => (i === 0 ? `- ${text}` : `  ${text}`)),
    ),
  ];
}

const indented = (text: string, width: number) =>
  wrapUnits(text, width - 2).map((line) => `  ${line}`);

/** A number and its unit, which stay on one line. */
const WITH_UNIT = /(?<=\d) (?=(?:h|days?|gal|W|kW|kWh|of 100)\b)/g;
/** Stands for that blank while lines are broken; a letter like any other. */
const HELD = '\u2007';

function wrapUnits(text: string, width: number): string[] {
  const held = text.replace(WITH_UNIT, HELD);
  const lines = breakAt(held.split(' '), width);
  return lines.map((line) => line.replaceAll(HELD, ' '));
}

/** Words one after the other, as many on a line as fit. A word wider than the line is broken by itself. */
function breakAt(words: readonly string[], width: number): string[] {
  const lines: string[] = [];
  for (const word of words) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(last) + 1 + widthOf(word) <= width) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else lines.push(...(widthOf(word) <= width ? [word] : wrapText(word, width)));
  }
  return lines;
}
