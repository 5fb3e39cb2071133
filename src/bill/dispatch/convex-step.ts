import type { StageCost } from './stage-cost';
import type { ValueStore } from './value-store';

/** Pieces shorter than this are rounding, kWh. */
export const tinyKwh = 1e-11;
const sameSlope = 1e-12;

/**
 * One step back in time when both functions are convex: V_h(s) = min over D of f(D) + V_{h+1}(s + D).
 * That is the infimal convolution of V_{h+1} with f mirrored, whose pieces are the pieces of both in order of slope
 * (Rockafellar 1970, theorem 16.4: its conjugate is the sum of the conjugates). Then cut to floor <= s <= top.
 * False when no charge in that range can be served.
 */
export function convexStep(
  values: ValueStore,
  h: number,
  stage: StageCost,
  range: { floor: number; top: number },
): boolean {
  const start = values.open(h, values.pieces[h + 1]! + stage.pieces + 1);
  const left = values.left[h + 1]! - stage.right;
  const pieces = merge(values, h + 1, stage, start);
  const leftCost = values.leftCost[h + 1]! + stage.rightCost;
  return cut(values, h, { start, pieces, left, leftCost, floor: range.floor, top: range.top });
}

function merge(values: ValueStore, from: number, stage: StageCost, start: number): number {
  const { slope, length } = values;
  let i = values.first[from]!;
  const end = i + values.pieces[from]!;
  let j = stage.pieces - 1;
  let out = start;
  while (i < end || j >= 0) {
    // The mirror of f has slopes -f', met from its right end.
    const own = i < end ? slope[i]! : Number.POSITIVE_INFINITY;
    const other = j >= 0 ? -stage.slope[j]! : Number.POSITIVE_INFINITY;
    const next = Math.min(own, other);
    const long = own <= other ? length[i++]! : stage.length[j--]!;
    if (out > start && next - slope[out - 1]! <= sameSlope) {
      length[out - 1] = length[out - 1]! + long;
    } else {
      slope[out] = next;
      length[out] = long;
      out++;
    }
  }
  return out - start;
}

interface Uncut {
  start: number;
  pieces: number;
  left: number;
  leftCost: number;
  floor: number;
  top: number;
}

/** Keep the part of a function between floor and top. */
export function cut(values: ValueStore, h: number, uncut: Uncut): boolean {
  const { slope, length } = values;
  const { start, floor, top } = uncut;
  let { pieces, left, leftCost } = uncut;
  let i = start;
  while (left < floor - tinyKwh && i < start + pieces) {
    const part = Math.min(length[i]!, floor - left);
    leftCost += part * slope[i]!;
    left += part;
    length[i] = length[i]! - part;
    if (length[i]! <= tinyKwh) i++;
  }
  if (left < floor - tinyKwh || left > top + tinyKwh) return false;
  pieces -= i - start;
  values.first[h] = i;
  values.left[h] = left;
  values.leftCost[h] = leftCost;
  let room = top - left;
  let kept = 0;
  while (kept < pieces && room > tinyKwh) {
    if (length[i + kept]! > room) length[i + kept] = room;
    room -= length[i + kept]!;
    kept++;
  }
  values.close(h, kept);
  return true;
}
