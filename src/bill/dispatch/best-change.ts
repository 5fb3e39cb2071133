import type { StageCost } from './stage-cost';
import type { ValueStore } from './value-store';

/**
 * The change of the store in an hour that costs least with what follows: min over D of f(D) + V_next(s + D).
 * When both are convex, walk right until the sum of slopes is no longer negative; else try every corner of both.
 */
export function bestChange(
  stage: StageCost,
  values: ValueStore,
  next: number,
  storedKwh: number,
): number {
  return stage.convex && values.convex[next] === 1
    ? walk(stage, values, next, storedKwh)
    : tryCorners(stage, values, next, storedKwh);
}

function walk(stage: StageCost, values: ValueStore, next: number, stored: number): number {
  const { slope, length } = values;
  const min = Math.max(stage.left, values.left[next]! - stored);
  let change = min;
  // Skip to the piece of each function that lies right of the first change allowed.
  let p = 0;
  let pEnd = stage.left + (stage.length[0] ?? 0);
  while (p < stage.pieces - 1 && pEnd <= change) pEnd += stage.length[++p]!;
  let q = values.first[next]!;
  const qLast = q + values.pieces[next]! - 1;
  if (q > qLast || stage.pieces === 0) return change;
  let qEnd = values.left[next]! + length[q]! - stored;
  while (q < qLast && qEnd <= change) qEnd += length[++q]!;
  while (stage.slope[p]! + slope[q]! < 0) {
    change = Math.max(change, Math.min(pEnd, qEnd));
    const both = pEnd <= qEnd;
    if (both) {
      if (++p >= stage.pieces) break;
      pEnd += stage.length[p]!;
    } else {
      if (++q > qLast) break;
      qEnd += length[q]!;
    }
  }
  return change;
}

function tryCorners(stage: StageCost, values: ValueStore, next: number, stored: number): number {
  const low = Math.max(stage.left, values.left[next]! - stored);
  const high = Math.min(stage.right, values.right(next) - stored);
  let best = low;
  let bestCost = Number.POSITIVE_INFINITY;
  const consider = (change: number) => {
    if (change < low || change > high) return;
    const cost = stageCostAt(stage, change) + values.costAt(next, stored + change);
    if (cost < bestCost) {
      bestCost = cost;
      best = change;
    }
  };
  consider(low);
  consider(high);
  if (low <= 0 && high >= 0) consider(0);
  let at = stage.left;
  for (let i = 0; i < stage.pieces; i++) {
    at += stage.length[i]!;
    consider(at);
  }
  at = values.left[next]! - stored;
  for (let i = 0; i < values.pieces[next]!; i++) {
    at += values.length[values.first[next]! + i]!;
    consider(at);
  }
  return best;
}

/** Cost of a change of the store in one hour, $. */
export function stageCostAt(stage: StageCost, change: number): number {
  let at = stage.left;
  let cost = stage.leftCost;
  for (let i = 0; i < stage.pieces && at < change; i++) {
    const part = Math.min(stage.length[i]!, change - at);
    cost += part * stage.slope[i]!;
    at += part;
  }
  return cost;
}
