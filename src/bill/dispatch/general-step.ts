import { stageCostAt } from './best-change';
import { tinyKwh } from './convex-step';
import { type Corner, lowerEnvelope } from './lower-envelope';
import type { StageCost } from './stage-cost';
import type { ValueStore } from './value-store';

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
  const corners = lowerEnvelope(candidates(values, h + 1, stage), low, Math.max(low, high));
  write(values, h, straighten(corners));
  return true;
}

/**
 * V shifted to each corner of f, and f mirrored at each corner of V. Where a line turns down from left to right
 * nothing can be least but at a corner of the other line, so such a corner brings no candidate.
 */
function candidates(values: ValueStore, next: number, stage: StageCost): Corner[][] {
  let at = values.left[next]!;
  // Costs are counted from the left end, so that a year's sum does not drown the small differences between them.
  let cost = 0;
  const own: Corner[] = [{ at, cost }];
  for (let i = values.first[next]!, end = i + values.pieces[next]!; i < end; i++) {
    at += values.length[i]!;
    cost += values.length[i]! * values.slope[i]!;
    own.push({ at, cost });
  }
  const f: Corner[] = [{ at: stage.left, cost: stage.leftCost }];
  let change = stage.left;
  for (let i = 0; i < stage.pieces; i++) {
    change += stage.length[i]!;
    f.push({ at: change, cost: stageCostAt(stage, change) });
  }
  const mirrored = [...f].reverse();
  return [
    ...upward(f).map((corner) =>
      own.map((v) => ({ at: v.at - corner.at, cost: v.cost + corner.cost })),
    ),
    ...upward(own).map((corner) =>
      mirrored.map((x) => ({ at: corner.at - x.at, cost: x.cost + corner.cost })),
    ),
  ];
}

/** The ends of a line, and the corners at which it does not turn down. */
function upward(line: readonly Corner[]): Corner[] {
  return line.filter((corner, i) => {
    const [before, after] = [line[i - 1], line[i + 1]];
    if (before === undefined || after === undefined) return true;
    const rise = (corner.cost - before.cost) * (after.at - corner.at);
    return rise <= (after.cost - corner.cost) * (corner.at - before.at) + 1e-15;
  });
}

/** Corners closer to the straight line between their neighbors than this are rounding, $. */
const sameCost = 1e-11;

/** Leave out the corners at which nothing bends, so that rounding does not breed pieces from hour to hour. */
function straighten(corners: readonly Corner[]): Corner[] {
  const kept: Corner[] = [corners[0]!];
  for (let i = 1; i + 1 < corners.length; i++) {
    const before = kept.at(-1)!;
    const corner = corners[i]!;
    const after = corners[i + 1]!;
    if (corner.at - before.at <= tinyKwh) continue;
    const share = (corner.at - before.at) / (after.at - before.at);
    const straight = before.cost + (after.cost - before.cost) * share;
    if (Math.abs(corner.cost - straight) > sameCost) kept.push(corner);
  }
  if (corners.length > 1) kept.push(corners.at(-1)!);
  return kept;
}

function write(values: ValueStore, h: number, corners: readonly Corner[]): void {
  const start = values.open(h, corners.length);
  values.left[h] = corners[0]!.at;
  values.leftCost[h] = values.leftCost[h + 1]! + corners[0]!.cost;
  let out = start;
  let convex = 1;
  for (let i = 1; i < corners.length; i++) {
    const long = corners[i]!.at - corners[i - 1]!.at;
    if (long <= tinyKwh) continue;
    const slope = (corners[i]!.cost - corners[i - 1]!.cost) / long;
    if (out > start && slope < values.slope[out - 1]!) convex = 0;
    values.slope[out] = slope;
    values.length[out] = long;
    out++;
  }
  values.convex[h] = convex;
  values.close(h, out - start);
}
