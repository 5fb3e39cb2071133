import { assertBattery } from './battery';
import { bestChange } from './best-change';
import { convexStep } from './convex-step';
import { type Dispatch, type DispatchProblem, problemHours } from './dispatch-problem';
import { followCharge } from './follow-charge';
import { generalStep } from './general-step';
import { emptyStage, fillStage } from './stage-cost';
import { ValueStore } from './value-store';

/** How the run of hours begins and ends. With no end given the last charge is free, and worth nothing. */
export interface Ends {
  readonly startKwh: number;
  readonly endKwh?: number;
}

/**
 * The cheapest way to run a battery when every hour is known beforehand: a ceiling no real system reaches.
 * Exact: the value function V_h(s) = min f_h(D) + V_{h+1}(s + D) is carried back as a piecewise-linear function,
 * with no grid (Bellman 1957). Time is about hours x pieces. Null when the floor or an import limit cannot be kept.
 */
export function optimum(problem: DispatchProblem, ends: Ends): Dispatch | null {
  assertBattery(problem.battery);
  problemHours(problem);
  const values = valueFunctions(problem, ends.endKwh);
  if (values === null) return null;
  const { startKwh } = ends;
  const tolerance = 1e-9;
  if (startKwh < values.left[0]! - tolerance || startKwh > values.right(0) + tolerance) return null;
  const stage = emptyStage();
  return followCharge(problem, startKwh, (h, stored) =>
    bestChange(fillStage(stage, problem, h), values, h + 1, stored),
  );
}

/**
 * The least cost from each hour on, for every charge; null when some hour cannot be served at all.
 * @param room a store of an earlier problem that nobody reads any more, written over where it has as many hours
 */
export function valueFunctions(
  problem: DispatchProblem,
  endKwh?: number,
  room?: ValueStore | null,
): ValueStore | null {
  const hours = problem.loadKwh.length;
  const top = problem.battery.usableKwh;
  const values = room?.hours === hours ? room.begin() : new ValueStore(hours);
  const floorEnd = endKwh ?? problem.floorKwh[hours]!;
  const at = values.open(hours, 1);
  values.left[hours] = floorEnd;
  if (endKwh === undefined && top > floorEnd) {
    values.slope[at] = 0;
    values.length[at] = top - floorEnd;
    values.close(hours, 1);
  } else values.close(hours, 0);
  const stage = emptyStage();
  for (let h = hours - 1; h >= 0; h--) {
    fillStage(stage, problem, h);
    if (!stage.feasible) return null;
    const range = { floor: problem.floorKwh[h]!, top };
    const step = stage.convex && values.convex[h + 1] === 1 ? convexStep : generalStep;
    if (!step(values, h, stage, range)) return null;
  }
  return values;
}
