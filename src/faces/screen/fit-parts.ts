import { EMPTY, type Line, wholeWords } from './line';

/** A stretch of the screen. `height` is what it would like; it may be given less. */
export interface FramePart {
  readonly name: string;
  readonly height: number;
}

/** Make `name` no taller than `to`. */
export type CutRule = readonly [name: string, to: number];

/**
 * Heights that together fit the budget. Rules are followed in order, each only as far as needed,
 * so what stands first is given up first.
 */
export function fitParts(
  parts: readonly FramePart[],
  budget: number,
  rules: readonly CutRule[],
): ReadonlyMap<string, number> {
  const heights = new Map(parts.map((part) => [part.name, part.height]));
  let over = parts.reduce((sum, part) => sum + part.height, 0) - budget;
  for (const [name, to] of rules) {
    if (over <= 0) break;
    const height = heights.get(name);
    if (height === undefined || height <= to) continue;
    const cut = Math.min(over, height - to);
    heights.set(name, height - cut);
    over -= cut;
  }
  return heights;
}

/** The first `height` lines; when some are missing the last one ends with the mark. */
export function cutLines(lines: readonly Line[], height: number, mark: string): readonly Line[] {
  if (lines.length <= height) return lines;
  if (height <= 0) return [];
  const kept = lines.slice(0, height);
  const last = kept[height - 1] ?? EMPTY;
  const end = last.at(-1) ?? { text: '' };
  const room = end.text.slice(0, Math.max(0, end.text.length - mark.length));
  const text = wholeWords(end.text, room) + mark;
  return [...kept.slice(0, -1), [...last.slice(0, -1), { ...end, text }]];
}
