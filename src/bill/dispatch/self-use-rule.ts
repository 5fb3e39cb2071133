import type { DispatchProblem } from './dispatch-problem';
import type { HourRule } from './rule';

/** Solar self-use: store any surplus sun, cover any need from the store, never charge from the grid. */
export function selfUseRule(problem: DispatchProblem): HourRule {
  return (h) => problem.solarKwh[h]! - problem.loadKwh[h]!;
}
