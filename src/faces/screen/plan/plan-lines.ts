import { Marked, type Token, type Tokens } from 'marked';
import { markedTerminal } from 'marked-terminal';
import wrapAnsi from 'wrap-ansi';
import { widthOf } from '../line';

/** Nothing in a terminal is easier to read for being wider than this. */
const WIDEST = 100;

/** A heading that begins a section, and the line it stands on. */
export interface Section {
  readonly title: string;
  readonly line: number;
}

/** The plan laid out for one width. */
export interface LaidOut {
  readonly lines: readonly string[];
  /** First line of each block of the Markdown (a paragraph, a list, a table). The same blocks at every width. */
  readonly blocks: readonly number[];
  /** Headings of the second rank. What stands before the first is the front page. */
  readonly sections: readonly Section[];
}

/** Tables drawn where they fit, or told row by row, which can be read aloud. */
export type Tables = 'drawn' | 'told';

/**
 * The plan's Markdown as lines for a terminal, none wider than `columns`. A table that does not fit becomes
 * "label: value" lines, row by row. Colors are those of the terminal library, or none where color is off.
 */
export function layOut(markdown: string, columns: number, tables: Tables = 'drawn'): LaidOut {
  const width = Math.min(columns, WIDEST);
  const reader = new Marked();
  // The library's own line breaking does not reach into lists, so ours does it all.
  reader.use(
    markedTerminal({ width, reflowText: false, tab: 2, showSectionPrefix: false }) as never,
  );
  const lines: string[] = [];
  const blocks: number[] = [];
  const sections: Section[] = [];
  for (const token of reader.lexer(markdown)) {
    if (token.type === 'space') continue;
    blocks.push(lines.length);
    if (token.type === 'heading' && token.depth === 2) {
      sections.push({ title: titleOf(token as Tokens.Heading), line: lines.length });
    }
    const tokens = Object.assign(narrow(reader, token, tables === 'drawn' ? columns : 0), {
      links: {},
    });
    const text = (reader.parser(tokens as never) as string).replace(/^\n+/, '').trimEnd();
    lines.push(...text.split('\n').flatMap((line) => broken(line, width)), '');
  }
  return { lines: onceBlank(lines), blocks, sections };
}

/** The lines alone. */
export function planLines(markdown: string, columns: number): readonly string[] {
  return layOut(markdown, columns).lines;
}

function titleOf({ text }: Tokens.Heading): string {
  return text.replace(/[*_`]/g, '');
}

function broken(line: string, width: number): string[] {
  return TABLE_LINE.test(line) ? [line] : fold(line, width);
}

/** Without the blank line at the end. */
function onceBlank(lines: readonly string[]): string[] {
  return lines.at(-1) === '' ? lines.slice(0, -1) : [...lines];
}

/** A line of a drawn table, which fits already and must not be folded. */
const TABLE_LINE = /[│┌├└]/;

/** A table that is too wide, as paragraphs of "label: value". */
function narrow(reader: Marked, token: Token, width: number): Token[] {
  if (token.type !== 'table') return [token];
  const table = token as Tokens.Table;
  const columns = table.header.map((head, c) =>
    Math.max(widthOf(head.text), ...table.rows.map((row) => widthOf(row[c]!.text))),
  );
  const needs = columns.reduce((sum, w) => sum + w + 3, 1);
  if (needs <= width) return [token];
  const rows = table.rows.map((row) =>
    row.map((cell, c) => `${c === 0 ? '' : '  '}${table.header[c]!.text}: ${cell.text}`).join('\n'),
  );
  return reader.lexer(
    rows
      .map((row) => `${row}\n`)
      .join('\n')
      .replace(/^ {2}/gm, '\u00a0\u00a0')
      .replace(/\n(?=\u00a0)/g, '  \n'),
  );
}

/** A line broken at spaces, its later lines indented like its text. */
function fold(line: string, width: number): string[] {
  if (widthOf(line) <= width) return [line.trimEnd()];
  const indent = /^(\s|\u00a0)*([*-] )?/.exec(line)![0];
  const rest = line.slice(indent.length);
  const pad = ' '.repeat(widthOf(indent));
  const folded = wrapAnsi(rest, width - pad.length, { hard: true, trim: true }).split('\n');
  return folded.map((part, i) => (i === 0 ? indent : pad) + part);
}
