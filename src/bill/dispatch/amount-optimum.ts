import { type AmountStep, amountCost } from './amount-steps';
import type { Dispatch, DispatchProblem } from './dispatch-problem';
import { followCharge } from './follow-charge';

export interface AmountOptimum {
  readonly dispatch: Dispatch;
  /** Energy, wear and what the steps add, $. */
  readonly cost: number;
  /** False when the steps fall with the amount, which makes the problem no longer convex. */
  readonly exact: boolean;
}

type Solve = (problem: DispatchProblem) => Dispatch | null;

/**
 * The optimum of one bill whose kWh price also depends on the month's amount. With rising steps the cost of the
 * amount is convex, so a price per kWh added in every hour finds the optimum (Lagrange; strong duality of linear
 * programs): a step's own price where the amount lies within the step, or, at a corner between two steps, the price
 * between them at which the least amount and the most amount meet the corner, the schedule being a mixture of both.
 */
export function amountOptimum(
  problem: DispatchProblem,
  steps: readonly AmountStep[],
  solve: Solve,
): AmountOptimum | null {
  const at = (added: number) => {
    const dispatch = solve(withAdded(problem, added));
    if (dispatch === null) return null;
    const kwh = dispatch.importKwh.reduce((sum, k) => sum + k, 0);
    return { dispatch, kwh, energy: dispatch.cost - added * kwh };
  };
  const rising = steps.every((s, i) => i === 0 || s.added >= steps[i - 1]!.added);
  let best: AmountOptimum | null = null;
  let from = 0;
  for (const [i, step] of steps.entries()) {
    const found = at(step.added);
    if (found === null) return null;
    const cost = found.energy + amountCost(steps, found.kwh);
    if (best === null || cost < best.cost) best = { dispatch: found.dispatch, cost, exact: rising };
    const inside = found.kwh >= from - 1e-9 && found.kwh <= step.toKwh + 1e-9;
    if (rising && inside) return { dispatch: found.dispatch, cost, exact: true };
    // Less is bought at this price than the step begins with: the corner before it holds the optimum.
    if (rising && i > 0 && found.kwh < from) {
      return corner(problem, steps, { kwh: from, low: steps[i - 1]!.added, high: step.added, at });
    }
    from = step.toKwh;
  }
  return best;
}

interface Tried {
  dispatch: Dispatch;
  kwh: number;
  energy: number;
}

/** Raise the added price until the amounts bought just below and just above it enclose the corner. */
function corner(
  problem: DispatchProblem,
  steps: readonly AmountStep[],
  to: { kwh: number; low: number; high: number; at: (added: number) => Tried | null },
): AmountOptimum {
  let [more, less] = [to.at(to.low)!, to.at(to.high)!];
  for (let i = 0; i < 60; i++) {
    // The price at which buying more and buying less cost the same.
    const added = (less.energy - more.energy) / (more.kwh - less.kwh);
    const found = to.at(added)!;
    const bound = more.energy + added * more.kwh;
    if (found.energy + added * found.kwh >= bound - 1e-9) break;
    if (found.kwh >= to.kwh) more = found;
    else less = found;
  }
  const share = (to.kwh - less.kwh) / (more.kwh - less.kwh);
  const dispatch = mixture(problem, { more: more.dispatch, less: less.dispatch, share });
  const kwh = dispatch.importKwh.reduce((sum, k) => sum + k, 0);
  return { dispatch, cost: dispatch.cost + amountCost(steps, kwh), exact: true };
}

function mixture(
  problem: DispatchProblem,
  given: { more: Dispatch; less: Dispatch; share: number },
): Dispatch {
  const stored = given.more.storedKwh.map(
    (kwh, h) => given.share * kwh + (1 - given.share) * given.less.storedKwh[h]!,
  );
  return followCharge(problem, stored[0]!, (h) => stored[h + 1]! - stored[h]!);
}

function withAdded(problem: DispatchProblem, added: number): DispatchProblem {
  if (added === 0) return problem;
  return { ...problem, importPrice: Float64Array.from(problem.importPrice, (p) => p + added) };
}
