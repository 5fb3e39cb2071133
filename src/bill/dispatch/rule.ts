import { type Dispatch, type DispatchProblem, mostCharge, mostDischarge } from './dispatch-problem';
import { followCharge } from './follow-charge';

/**
 * What a real system wants to do in an hour: kWh on the house side, positive to charge, negative to discharge.
 * It may look at the hours up to `h`, at the charge, and at the printed prices of any hour; not at later load or sun.
 */
export type HourRule = (h: number, storedKwh: number) => number;

/** Run a rule hour by hour, held to the battery's power, its size, the floor and what the problem permits. */
export function runRule(problem: DispatchProblem, rule: HourRule, startKwh: number): Dispatch {
  return followCharge(problem, startKwh, (h, stored) =>
    heldChange(problem, { h, stored, wantedKwh: rule(h, stored) }),
  );
}

/** The change of the store that a wish comes to, kWh; below the floor it charges whatever the rule says. */
export function heldChange(
  problem: DispatchProblem,
  given: { h: number; stored: number; wantedKwh: number },
): number {
  const { usableKwh, chargeEfficiency: ec, dischargeEfficiency: ed } = problem.battery;
  const { h, stored } = given;
  const floor = problem.floorKwh[h + 1]!;
  const charge = Math.min(mostCharge(problem, h), (usableKwh - stored) / ec);
  if (stored < floor) return Math.min(charge * ec, Math.max(floor - stored, given.wantedKwh * ec));
  if (given.wantedKwh >= 0) return Math.max(0, Math.min(charge, given.wantedKwh)) * ec;
  const discharge = Math.min(mostDischarge(problem, h), (stored - floor) * ed);
  return -Math.min(discharge, -given.wantedKwh) / ed;
}
