import type { DispatchProblem } from './dispatch-problem';

/**
 * Import to hold in the hours a demand charge counts, kW: the lowest level a full battery could have held on the
 * worst of the last days. On one day: the least M with sum of max(0, net - M) <= usable energy, and net - M <= power.
 * 0 when no counted hour lies in those days.
 */
export function peakTarget(
  problem: DispatchProblem,
  counts: ArrayLike<number>,
  given: { h: number; pastDays: number },
): number {
  const { usableKwh, dischargeKw, dischargeEfficiency } = problem.battery;
  const energy = (usableKwh - problem.floorKwh[given.h]!) * dischargeEfficiency;
  let target = 0;
  for (let day = 1; day <= given.pastDays && given.h - 24 * day >= 0; day++) {
    const net: number[] = [];
    for (let i = given.h - 24 * day; i < given.h - 24 * day + 24; i++) {
      if (counts[i]! > 0) net.push(Math.max(0, problem.loadKwh[i]! - problem.solarKwh[i]!));
    }
    if (net.length === 0) continue;
    target = Math.max(target, Math.max(...net) - dischargeKw, levelHeld(net, energy));
  }
  return target;
}

/** The level that cutting the highest hours comes down to when `energy` kWh can be cut off their tops. */
export function levelHeld(net: readonly number[], energy: number): number {
  const high = [...net].sort((a, b) => b - a);
  let above = 0;
  for (let k = 1; k <= high.length; k++) {
    above += high[k - 1]!;
    const level = (above - energy) / k;
    if (level >= (high[k] ?? 0)) return Math.max(0, level);
  }
  return 0;
}
