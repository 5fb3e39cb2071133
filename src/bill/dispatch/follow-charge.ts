import type { Dispatch, DispatchProblem } from './dispatch-problem';
import { meterHour } from './meter-hour';

/**
 * Play the hours forward: `change(h, stored)` says how the store moves, kWh; the meter and the money follow.
 * c = D / ec when the store rises, d = -D ed when it falls.
 */
export function followCharge(
  problem: DispatchProblem,
  startKwh: number,
  change: (h: number, storedKwh: number) => number,
): Dispatch {
  const { chargeEfficiency: ec, dischargeEfficiency: ed, wearPerKwh = 0 } = problem.battery;
  const hours = problem.loadKwh.length;
  const of = () => new Float64Array(hours);
  const out = {
    importKwh: of(),
    exportKwh: of(),
    curtailedKwh: of(),
    chargeKwh: of(),
    dischargeKwh: of(),
    storedKwh: new Float64Array(hours + 1),
  };
  out.storedKwh[0] = startKwh;
  let cost = 0;
  for (let h = 0; h < hours; h++) {
    const stored = out.storedKwh[h]!;
    const moved = change(h, stored);
    const charge = moved > 0 ? moved / ec : 0;
    const discharge = moved < 0 ? -moved * ed : 0;
    const through = meterHour(problem, h, problem.loadKwh[h]! + charge - discharge);
    out.chargeKwh[h] = charge;
    out.dischargeKwh[h] = discharge;
    out.importKwh[h] = through.importKwh;
    out.exportKwh[h] = through.exportKwh;
    out.curtailedKwh[h] = through.curtailedKwh;
    out.storedKwh[h + 1] = stored + moved;
    cost +=
      problem.importPrice[h]! * through.importKwh - problem.exportPrice[h]! * through.exportKwh;
    cost += wearPerKwh * discharge;
  }
  return { ...out, cost };
}
