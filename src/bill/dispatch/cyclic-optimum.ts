import type { Dispatch, DispatchProblem } from './dispatch-problem';
import { optimum } from './optimum';

/**
 * The optimum when the hours repeat for ever: the charge at the end is the charge at the start, wherever that is.
 * Exact without a search: a repeating run that never meets its floor can be shifted down, at no cost, until it does.
 * So it meets the floor in some hour, and the best over the hour it starts from, at the floor, is the answer.
 * Meant for a day or a few: the work grows with the square of the hours. Null when the limits cannot be kept.
 */
export function cyclicOptimum(problem: DispatchProblem): Dispatch | null {
  const hours = problem.loadKwh.length;
  let best: Dispatch | null = null;
  let bestStart = 0;
  for (let start = 0; start < hours; start++) {
    const turned = turnProblem(problem, start);
    const floor = turned.floorKwh[0]!;
    const found = optimum(turned, { startKwh: floor, endKwh: floor });
    if (found !== null && (best === null || found.cost < best.cost)) {
      best = found;
      bestStart = start;
    }
  }
  return best && turnBack(best, (hours - bestStart) % hours);
}

const turn = (list: ArrayLike<number>, by: number): Float64Array =>
  Float64Array.from(list, (_, i) => list[(i + by) % list.length]!);

function turnProblem(problem: DispatchProblem, by: number): DispatchProblem {
  const floors = Array.from(problem.floorKwh).slice(0, -1);
  const floorKwh = turn(floors, by);
  return {
    ...problem,
    loadKwh: turn(problem.loadKwh, by),
    solarKwh: turn(problem.solarKwh, by),
    importPrice: turn(problem.importPrice, by),
    exportPrice: turn(problem.exportPrice, by),
    floorKwh: Float64Array.from([...floorKwh, floorKwh[0]!]),
    ...(problem.peak && { peak: { ...problem.peak, kw: turn(problem.peak.kw, by) } }),
  };
}

function turnBack(found: Dispatch, by: number): Dispatch {
  const stored = turn(found.storedKwh.slice(0, -1), by);
  return {
    importKwh: turn(found.importKwh, by),
    exportKwh: turn(found.exportKwh, by),
    curtailedKwh: turn(found.curtailedKwh, by),
    chargeKwh: turn(found.chargeKwh, by),
    dischargeKwh: turn(found.dischargeKwh, by),
    storedKwh: Float64Array.from([...stored, stored[0]!]),
    cost: found.cost,
  };
}
