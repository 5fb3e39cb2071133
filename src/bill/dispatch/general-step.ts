import { stageCostAt } from './best-change';
import { tinyKwh } from './convex-step';
import type { StageCost } from './stage-cost';
import type { ValueStore } from './value-store';

/** A straight piece: cost = cost0 + slope (s - from) for from <= s <= to. */
interface Piece {
  from: number;
  to: number;
  cost: number;
  slope: number;
}

/**
 * One step back in time when the hour or the value function is not convex: export worth more than import, or a
 * negative price. The least of f(D) + V(s + D) is met at a corner of f or of V, so V_h is the lower envelope of V
 * shifted to each corner of f and of f mirrored at each corner of V. Exact, and slower than the convex step.
 */
export function generalStep(
  values: ValueStore,
  h: number,
  stage: StageCost,
  range: { floor: number; top: number },
): boolean {
  const low = Math.max(range.floor, values.left[h + 1]! - stage.right);
  const high = Math.min(range.top, values.right(h + 1) - stage.left);
  if (low > high + tinyKwh) return false;
  const corners = envelope(candidates(values, h + 1, stage), low, Math.max(low, high));
  write(values, h, straighten(corners));
  return true;
}

function candidates(values: ValueStore, next: number, stage: StageCost): Piece[] {
  const out: Piece[] = [];
  const own: { at: number; cost: number }[] = [];
  let at = values.left[next]!;
  // Costs are counted from the left end, so that a year's sum does not drown the small differences between them.
  let cost = 0;
  own.push({ at, cost });
  for (let i = values.first[next]!, end = i + values.pieces[next]!; i < end; i++) {
    at += values.length[i]!;
    cost += values.length[i]! * values.slope[i]!;
    own.push({ at, cost });
  }
  const f: { at: number; cost: number }[] = [{ at: stage.left, cost: stage.leftCost }];
  let change = stage.left;
  for (let i = 0; i < stage.pieces; i++) {
    change += stage.length[i]!;
    f.push({ at: change, cost: stageCostAt(stage, change) });
  }
  for (const corner of f) pushPieces(out, own, (v) => v.at - corner.at, corner.cost);
  const mirrored = [...f].reverse();
  for (const corner of own) pushPieces(out, mirrored, (x) => corner.at - x.at, corner.cost);
  return out;
}

function pushPieces(
  out: Piece[],
  line: readonly { at: number; cost: number }[],
  place: (corner: { at: number; cost: number }) => number,
  add: number,
): void {
  if (line.length === 1) {
    const from = place(line[0]!);
    out.push({ from, to: from, cost: line[0]!.cost + add, slope: 0 });
  }
  for (let i = 0; i + 1 < line.length; i++) {
    const from = place(line[i]!);
    const to = place(line[i + 1]!);
    const rise = line[i + 1]!.cost - line[i]!.cost;
    const slope = to - from > tinyKwh ? rise / (to - from) : 0;
    out.push({ from, to, cost: line[i]!.cost + add, slope });
  }
}

/** Corners of the lower envelope of pieces over [low, high]. */
function envelope(pieces: readonly Piece[], low: number, high: number): [number, number][] {
  const places = [...new Set([low, high, ...pieces.flatMap((p) => [p.from, p.to])])]
    .filter((s) => s >= low && s <= high)
    .sort((a, b) => a - b);
  const corners: [number, number][] = [[low, lowest(pieces, low)]];
  for (let i = 0; i + 1 < places.length; i++) {
    const from = places[i]!;
    const to = places[i + 1]!;
    if (to - from <= tinyKwh) continue;
    const mid = (from + to) / 2;
    const lines = pieces.filter((p) => p.from <= mid && p.to >= mid && p.to > p.from);
    envelopeBetween(lines, from, to, corners);
  }
  return corners;
}

/** Walk the lower envelope of straight lines that all span [from, to]. */
function envelopeBetween(
  lines: readonly Piece[],
  from: number,
  to: number,
  corners: [number, number][],
): void {
  const value = (line: Piece, s: number) => line.cost + line.slope * (s - line.from);
  let at = from;
  let now = lines.reduce((best, line) => {
    const gap = value(line, at) - value(best, at);
    return gap < -1e-12 || (gap <= 1e-12 && line.slope < best.slope) ? line : best;
  });
  for (;;) {
    let cross = to;
    let next: Piece | null = null;
    for (const line of lines) {
      if (line.slope >= now.slope - 1e-12) continue;
      const s = at + (value(line, at) - value(now, at)) / (now.slope - line.slope);
      if (s > at + tinyKwh && s < cross) {
        cross = s;
        next = line;
      }
    }
    corners.push([cross, value(now, cross)]);
    if (next === null) return;
    at = cross;
    now = next;
  }
}

function lowest(pieces: readonly Piece[], s: number): number {
  let best = Number.POSITIVE_INFINITY;
  for (const p of pieces) {
    if (s < p.from - tinyKwh || s > p.to + tinyKwh) continue;
    best = Math.min(best, p.cost + p.slope * (s - p.from));
  }
  return best;
}

/** Corners closer to the straight line between their neighbors than this are rounding, $. */
const sameCost = 1e-11;

/** Leave out the corners at which nothing bends, so that rounding does not breed pieces from hour to hour. */
function straighten(corners: readonly [number, number][]): [number, number][] {
  const kept: [number, number][] = [corners[0]!];
  for (let i = 1; i + 1 < corners.length; i++) {
    const [s0, c0] = kept.at(-1)!;
    const [s1, c1] = corners[i]!;
    const [s2, c2] = corners[i + 1]!;
    if (s1 - s0 <= tinyKwh) continue;
    const straight = c0 + ((c2 - c0) * (s1 - s0)) / (s2 - s0);
    if (Math.abs(c1 - straight) > sameCost) kept.push([s1, c1]);
  }
  if (corners.length > 1) kept.push(corners.at(-1)!);
  return kept;
}

function write(values: ValueStore, h: number, corners: readonly [number, number][]): void {
  const start = values.open(h, corners.length);
  values.left[h] = corners[0]![0];
  values.leftCost[h] = values.leftCost[h + 1]! + corners[0]![1];
  let out = start;
  let convex = 1;
  for (let i = 1; i < corners.length; i++) {
    const long = corners[i]![0] - corners[i - 1]![0];
    if (long <= tinyKwh) continue;
    const slope = (corners[i]![1] - corners[i - 1]![1]) / long;
    if (out > start && slope < values.slope[out - 1]!) convex = 0;
    values.slope[out] = slope;
    values.length[out] = long;
    out++;
  }
  values.convex[h] = convex;
  values.close(h, out - start);
}
