import type { Dispatch, DispatchProblem } from '../bill/dispatch-problem';
import { type Rule, runRule } from '../bill/rule';

/** Run a rule on one day repeated until it settles; give what the third day from the end cost, past all end effects. */
export function repeatDay(
  problem: DispatchProblem,
  makeRule: (many: DispatchProblem) => Rule,
  days = 20,
): { cost: number; dispatch: Dispatch; from: number } {
  const hours = problem.loadKwh.length;
  const many = (list: ArrayLike<number>, length = hours * days) =>
    Float64Array.from({ length }, (_, h) => list[h % hours]!);
  const long: DispatchProblem = {
    ...problem,
    loadKwh: many(problem.loadKwh),
    solarKwh: many(problem.solarKwh),
    importPrice: many(problem.importPrice),
    exportPrice: many(problem.exportPrice),
    floorKwh: many(problem.floorKwh, hours * days + 1),
  };
  const dispatch = runRule(long, makeRule(long), problem.floorKwh[0]!);
  let cost = 0;
  const from = hours * (days - 3);
  for (let h = from; h < from + hours; h++) {
    cost += long.importPrice[h]! * dispatch.importKwh[h]!;
    cost -= long.exportPrice[h]! * dispatch.exportKwh[h]!;
  }
  return { cost, dispatch, from };
}
