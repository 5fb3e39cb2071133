import type { DispatchProblem } from './dispatch-problem';
import { levelHeld } from './peak-target';

/** What the peak asks of an hour: the least and the most the battery may add to the house's use, kWh. */
export interface HourHold {
  readonly min: number;
  readonly max: number;
}

const free: HourHold = { min: Number.NEGATIVE_INFINITY, max: Number.POSITIVE_INFINITY };

/**
 * Need of each hour of the day that counts, guessed from the last days: the mean of the hour, raised as far as the
 * worst of those days stood above the mean day. kWh, 24 entries.
 */
export function guessNeed(
  problem: DispatchProblem,
  counts: ArrayLike<number>,
  given: { h: number; pastDays: number },
): Float64Array {
  const mean = new Float64Array(24);
  let total = 0;
  let worst = 0;
  for (let day = 1; day <= given.pastDays && given.h - 24 * day >= 0; day++) {
    let sum = 0;
    let counted = false;
    for (let hour = 0; hour < 24; hour++) {
      const i = given.h - 24 * day + hour;
      if (!(counts[i]! > 0)) continue;
      counted = true;
      const need = Math.max(0, problem.loadKwh[i]! - problem.solarKwh[i]!);
      mean[hour] = mean[hour]! + need;
      sum += need;
    }
    if (!counted) continue;
    total += sum;
    worst = Math.max(worst, sum);
  }
  // Mean times worst over mean: `mean` and `total` are sums over the same days, so their number cancels.
  return total > 0 ? mean.map((need) => (need * worst) / total) : mean;
}

/**
 * Hold the import of an hour that counts at the level the charge left can keep to the end of the window, given what
 * the hour needs and what the rest is guessed to need, but not below the peak the month already has. Before the
 * window, charge at the last moment that still fills the battery for it.
 */
export function peakHold(
  problem: DispatchProblem,
  counts: ArrayLike<number>,
  at: { h: number; stored: number; peakKw: number; guess: Float64Array },
): HourHold {
  const { h, stored, peakKw, guess } = at;
  const { battery } = problem;
  const { chargeEfficiency: ec, dischargeEfficiency: ed } = battery;
  const dayEnd = h - (h % 24) + 24;
  const later: number[] = [];
  let begins = -1;
  for (let i = h + 1; i < dayEnd; i++) {
    if (!(counts[i]! > 0)) continue;
    if (begins < 0) begins = i;
    later.push(guess[i % 24]!);
  }
  const floor = problem.floorKwh[h + 1]!;
  const above = (level: number) => later.reduce((sum, need) => sum + Math.max(0, need - level), 0);
  if (counts[h]! > 0) {
    const net = problem.loadKwh[h]! - problem.solarKwh[h]!;
    const out = Math.max(0, stored - floor) * ed;
    const level = Math.max(peakKw, levelHeld([Math.max(0, net), ...later], out));
    const now = Math.max(0, net - level);
    // What the rest of the window could not use up may go now; all else waits, as insurance.
    return { min: -Math.max(now, out - above(0)), max: level - net };
  }
  if (begins < 0) return free;
  const full = (battery.usableKwh - floor) * ed;
  const level = Math.max(peakKw, levelHeld(later, full));
  const wanted = Math.min(battery.usableKwh, floor + above(level) / ed);
  const rest = (begins - h - 1) * battery.chargeKw * ec;
  return wanted - stored > rest ? { ...free, min: (wanted - stored - rest) / ec } : free;
}
