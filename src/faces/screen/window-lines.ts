import type { Glyphs } from './glyphs';
import type { Line } from './line';

export interface WindowParts {
  readonly lines: readonly Line[];
  readonly height: number;
  /** Lines that must be in sight. */
  readonly from: number;
  readonly to: number;
  readonly glyphs: Glyphs;
}

export interface Windowed {
  readonly lines: readonly Line[];
  /** First line in sight. */
  readonly start: number;
}

/** The part of a block that fits, around the lines that must be in sight, saying what is hidden. */
export function windowLines({ lines, height, from, to, glyphs }: WindowParts): Windowed {
  if (lines.length <= height) return { lines, start: 0 };
  const middle = Math.floor((from + to + 1 - height) / 2);
  const start = Math.max(0, Math.min(lines.length - height, Math.min(from, middle)));
  const shown = lines.slice(start, start + height);
  const after = lines.length - start - height;
  if (start > 0 && from > start) shown[0] = hidden(glyphs.above, start + 1);
  if (after > 0 && to < start + height - 1) shown[height - 1] = hidden(glyphs.below, after + 1);
  return { lines: shown, start };
}

function hidden(sign: string, count: number): Line {
  return [{ text: `  ${sign} ${count} more ${count === 1 ? 'line' : 'lines'}`, dim: true }];
}
