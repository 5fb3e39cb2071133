import type { Dispatch, DispatchProblem } from './dispatch-problem';

/** A demand charge over the hours of one bill: $/kW, and which hours count (not 0). */
export interface PeakCharge {
  readonly perKw: number;
  readonly counts: ArrayLike<number>;
}

export interface PeakOptimum {
  readonly dispatch: Dispatch;
  readonly peakKw: number;
  /** Energy and wear, plus the demand charge, $. */
  readonly cost: number;
}

/** Step for the slope at a peak, kW: far below any corner that matters, far above rounding. */
const step = 1e-6;

/**
 * The optimum of one bill with a demand charge: least of phi(M) + perKw M over the peak M, where phi is the least
 * energy cost with import held to M in the counted hours. phi is convex and piecewise linear, so the lines through
 * its ends meet below it; where phi touches that meeting point it is the least there is (Kelley 1960). `solve` gives
 * the optimum of a problem, `weight` how many such bills' energy one demand charge covers. Null when none is possible.
 */
export function peakOptimum(
  problem: DispatchProblem,
  charge: PeakCharge,
  solve: (held: DispatchProblem) => Dispatch | null,
  weight = 1,
): PeakOptimum | null {
  const free = solve(problem);
  if (free === null) return null;
  const hours = problem.loadKwh.length;
  const at = (peakKw: number): PeakOptimum | null => {
    const kw = Float64Array.from({ length: hours }, (_, h) =>
      charge.counts[h] ? peakKw : Number.POSITIVE_INFINITY,
    );
    const dispatch = solve({ ...problem, peak: { kw, perKwh: Number.POSITIVE_INFINITY } });
    if (dispatch === null) return null;
    return { dispatch, peakKw, cost: weight * dispatch.cost + charge.perKw * peakKw };
  };
  let freePeak = 0;
  for (let h = 0; h < hours; h++) {
    if (charge.counts[h]) freePeak = Math.max(freePeak, free.importKwh[h]!);
  }
  const most: PeakOptimum = {
    dispatch: free,
    peakKw: freePeak,
    cost: weight * free.cost + charge.perKw * freePeak,
  };
  return freePeak === 0 || charge.perKw === 0 ? most : between(at, lowestPeak(at, most), most);
}

/** The lowest peak that can be held at all, by halving. */
function lowestPeak(at: (kw: number) => PeakOptimum | null, most: PeakOptimum): PeakOptimum {
  const zero = at(0);
  if (zero !== null) return zero;
  let low = 0;
  let best = most;
  while (best.peakKw - low > 1e-9) {
    const middle = (low + best.peakKw) / 2;
    const found = at(middle);
    if (found === null) low = middle;
    else best = found;
  }
  return best;
}

function between(
  at: (kw: number) => PeakOptimum | null,
  low: PeakOptimum,
  high: PeakOptimum,
): PeakOptimum {
  let [left, right] = [low, high];
  let best = left.cost <= right.cost ? left : right;
  for (let i = 0; i < 60 && right.peakKw - left.peakKw > 4 * step; i++) {
    const leftSlope = (at(left.peakKw + step)!.cost - left.cost) / step;
    const rightSlope = (right.cost - at(right.peakKw - step)!.cost) / step;
    if (leftSlope >= 0) return left;
    if (rightSlope <= 0) return right;
    const span = right.peakKw - left.peakKw;
    const along = (right.cost - left.cost - rightSlope * span) / (leftSlope - rightSlope);
    // Keep clear of the ends, so that each round halves a real interval even after rounding.
    const move = Math.min(Math.max(along, 2 * step), span - 2 * step);
    const middle = at(left.peakKw + move)!;
    if (middle.cost < best.cost) best = middle;
    const bound = left.cost + leftSlope * move;
    if (middle.cost - bound <= 1e-7) return best;
    if ((at(middle.peakKw + step)!.cost - middle.cost) / step < 0) left = middle;
    else right = middle;
  }
  return best;
}
