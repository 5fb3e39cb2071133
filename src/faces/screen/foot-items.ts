import { flow } from './foot';
import { type Line, styled } from './line';

/** Keys of a screen, most used first, the way out last. Where they do not fit, whole items go, the first and last never. */
export function footItems(
  items: readonly string[],
  { width, height }: { readonly width: number; readonly height: number },
): Line[] {
  let kept = items;
  while (kept.length > 2 && flow(kept, width, GAP).length > height) {
    kept = [...kept.slice(0, -2), kept.at(-1)!];
  }
  return styled(flow(kept, width, GAP), { dim: true });
}

const GAP = '   ';
