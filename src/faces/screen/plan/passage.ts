import type { LaidOut } from './plan-lines';

/**
 * A place in the plan that is the same at every width: a block, and how much of its letters stand before it, from
 * 0 up to 1.
 */
export interface Passage {
  readonly block: number;
  readonly part: number;
}

export const BEGINNING: Passage = { block: 0, part: 0 };

/** The passage that begins with this line. */
export function passageAt({ lines, blocks }: LaidOut, line: number): Passage {
  const block = Math.max(
    0,
    blocks.findLastIndex((start) => start <= line),
  );
  const [first = 0, end] = [blocks[block], blocks[block + 1] ?? lines.length];
  const all = lettersIn(lines.slice(first, end));
  return { block, part: all === 0 ? 0 : lettersIn(lines.slice(first, line)) / all };
}

/** The line in which a passage begins. */
export function lineOf({ lines, blocks }: LaidOut, { block, part }: Passage): number {
  const [first = 0, end] = [blocks[block], blocks[block + 1] ?? lines.length];
  const all = lettersIn(lines.slice(first, end));
  let before = 0;
  for (let line = first; line < end; line += 1) {
    before += lettersIn([lines[line]!]);
    // A letter that begins the next line is not in this one.
    if (before > part * all + 1e-6) return line;
  }
  return Math.max(first, end - 1);
}

/** Letters and digits, without colors, blanks and what a table is drawn with. */
function lettersIn(lines: readonly string[]): number {
  const bare = lines.join('').replace(/\x1b\[[0-9;]*m/g, '');
  return (bare.match(/[\p{L}\p{N}]/gu) ?? []).length;
}
