import type { Glyphs } from './glyphs';
import { type Line, shorten } from './line';

export interface WindowParts {
  readonly lines: readonly Line[];
  /** First line of each row. */
  readonly starts: readonly number[];
  readonly height: number;
  /** Lines that must be in sight. */
  readonly from: number;
  readonly to: number;
  readonly width: number;
  readonly glyphs: Glyphs;
}

export interface Windowed {
  readonly lines: readonly Line[];
  /** First line in sight. */
  readonly start: number;
}

/** The part of a block that fits, around the lines that must be in sight, saying how many rows are hidden. */
export function windowLines(parts: WindowParts): Windowed {
  const { lines, height, from, to, width, glyphs } = parts;
  if (lines.length <= height) return { lines, start: 0 };
  const middle = Math.floor((from + to + 1 - height) / 2);
  const start = Math.max(0, Math.min(lines.length - height, Math.min(from, middle)));
  const end = start + height;
  const shown = lines.slice(start, end);
  const rowsWithin = (first: number, last: number) =>
    parts.starts.filter((line) => line >= first && line < last).length;
  if (start > 0 && from > start) {
    shown[0] = hidden(`${glyphs.above} ${more(rowsWithin(0, start + 1))} above`, width, glyphs);
  }
  if (end < lines.length && to < end - 1) {
    const count = rowsWithin(end - 1, lines.length);
    shown[height - 1] = hidden(
      `${glyphs.below} ${more(count)} below (Down shows them)`,
      width,
      glyphs,
    );
  }
  return { lines: shown, start };
}

function more(count: number): string {
  return count === 0 ? 'more' : `${count} more`;
}

function hidden(words: string, width: number, glyphs: Glyphs): Line {
  return [{ text: shorten(`  ${words}`, width, glyphs.cut), dim: true }];
}
