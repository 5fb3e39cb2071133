import { type DispatchProblem, mostCharge, mostDischarge } from './dispatch-problem';
import { exportCredit, turningUse } from './meter-hour';

/**
 * Cost of one hour as a function of the change of the store, D = ec c - d / ed, in straight pieces from left to
 * right. At most four kinks, so at most five pieces.
 */
export interface StageCost {
  /** Smallest change, kWh (negative: full discharge), and the cost there, $. */
  left: number;
  leftCost: number;
  /** Largest change, and the cost there. */
  right: number;
  rightCost: number;
  pieces: number;
  /** $/kWh and kWh of each piece. */
  readonly slope: Float64Array;
  readonly length: Float64Array;
  /** Slopes rise from left to right. */
  convex: boolean;
  /** False when the import limit cannot be kept in this hour. */
  feasible: boolean;
}

export function emptyStage(): StageCost {
  const slope = new Float64Array(6);
  const length = new Float64Array(6);
  const ends = { left: 0, leftCost: 0, right: 0, rightCost: 0 };
  return { ...ends, pieces: 0, slope, length, convex: true, feasible: true };
}

const kinks = new Float64Array(5);

/**
 * Fill `stage` with the cost of hour `h`. With z = c - d on the house side and a = load + z, the meter costs
 * p (a - a*) above the turning use a* and e (a - a*) below it; a piece of z has slope g / ec when charging and
 * (g - wear) ed when discharging, g being p or e, plus the peak price above the import limit.
 */
export function fillStage(stage: StageCost, problem: DispatchProblem, h: number): StageCost {
  const { chargeEfficiency: ec, dischargeEfficiency: ed, wearPerKwh = 0 } = problem.battery;
  const price = problem.importPrice[h]!;
  const credit = exportCredit(problem, h);
  const solar = problem.solarKwh[h]!;
  const turn = turningUse({ price, credit, solar });
  const need = problem.loadKwh[h]! - turn;
  const limit = problem.peak ? problem.peak.kw[h]! : Number.POSITIVE_INFINITY;
  const extra = problem.peak?.perKwh ?? 0;
  // Import is a - solar, or all of a when a negative price holds solar back.
  const zPeak = limit - problem.loadKwh[h]! + (price >= 0 ? solar : 0);
  let max = mostCharge(problem, h);
  if (extra === Number.POSITIVE_INFINITY) max = Math.min(max, zPeak);
  const min = -mostDischarge(problem, h);
  stage.feasible = max >= min;
  if (!stage.feasible) return stage;

  const kinkCount = placeKinks({ min: min, max: max, turn: -need, peak: zPeak });
  stage.pieces = 0;
  stage.convex = true;
  for (let i = 0; i < kinkCount; i++) {
    const from = kinks[i]!;
    const to = kinks[i + 1]!;
    if (to <= from) continue;
    const g = (to > -need ? price : credit) + (to > zPeak ? extra : 0);
    const slope = to > 0 ? g / ec : (g - wearPerKwh) * ed;
    addPiece(stage, slope, to > 0 ? (to - from) * ec : (to - from) / ed);
  }
  // The cost at full discharge, z = least, straight from the meter.
  const a = need + min;
  const over = min > zPeak && Number.isFinite(extra) ? extra * (min - zPeak) : 0;
  const held = price < 0 ? price * turn : 0;
  const leftCost = held + (a > 0 ? price : credit) * a + over - wearPerKwh * min;
  let rightCost = leftCost;
  for (let i = 0; i < stage.pieces; i++) rightCost += stage.slope[i]! * stage.length[i]!;
  stage.leftCost = leftCost;
  stage.left = min / ed;
  stage.right = max > 0 ? max * ec : max / ed;
  stage.rightCost = rightCost;
  return stage;
}

function addPiece(stage: StageCost, slope: number, length: number): void {
  const last = stage.pieces - 1;
  if (last >= 0 && slope < stage.slope[last]!) stage.convex = false;
  stage.slope[stage.pieces] = slope;
  stage.length[stage.pieces] = length;
  stage.pieces++;
}

/**
 * Put the places where the slope may change into `kinks`, in order: the ends, and between them where the meter
 * turns, where the battery turns (0) and where the import limit is met. Gives the number of pieces.
 */
function placeKinks(given: { min: number; max: number; turn: number; peak: number }): number {
  const { min, max, turn, peak } = given;
  const low = Math.min(turn, peak);
  const high = Math.max(turn, peak);
  const first = Math.min(low, 0);
  const second = low > 0 ? low : Math.min(high, 0);
  const third = Math.max(high, 0);
  let n = 0;
  kinks[n++] = min;
  if (first > min && first < max) kinks[n++] = first;
  if (second > kinks[n - 1]! && second < max) kinks[n++] = second;
  if (third > kinks[n - 1]! && third < max) kinks[n++] = third;
  kinks[n] = max;
  return n;
}
