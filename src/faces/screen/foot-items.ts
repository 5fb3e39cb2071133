import { type Line, styled, widthOf } from './line';

/** Between two keys on one line. */
export const GAP = '   ';

/** Keys of a screen, most used first, the way out last. Where they do not fit, whole items go, the first and the last at the end. */
export function footItems(
  items: readonly string[],
  { width, height }: { readonly width: number; readonly height: number },
): Line[] {
  let kept = items;
  while (kept.length > 2 && flow(kept, width, GAP).length > height) {
    kept = [...kept.slice(0, -2), kept.at(-1)!];
  }
  if (flow(kept, width, GAP).length > height) kept = kept.slice(-1);
  return styled(flow(kept, width, GAP), { dim: true });
}

/** Items set one after the other, each whole on its line. */
export function flow(items: readonly string[], width: number, gap: string): string[] {
  const lines: string[] = [];
  for (const item of items) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(last) + gap.length + widthOf(item) <= width) {
      lines[lines.length - 1] = last + gap + item;
    } else lines.push(item);
  }
  return lines;
}
