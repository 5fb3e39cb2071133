import { type DispatchProblem, mostCharge } from './dispatch-problem';

/**
 * The floor hour by hour (hours + 1 entries) from the charge kept for outages in each month, kWh. Where a month asks
 * for more than the one before, the floor rises only as fast as the battery can be filled from its floor, by what it
 * may charge from: a step up cannot be met in one hour. Throws RangeError when a month asks for more than fits.
 */
export function floorHours(
  problem: Omit<DispatchProblem, 'floorKwh'>,
  months: { readonly floorKwhByMonth: readonly number[]; readonly monthOf: ArrayLike<number> },
): Float64Array {
  const { usableKwh, chargeEfficiency } = problem.battery;
  const { floorKwhByMonth, monthOf } = months;
  for (const kwh of floorKwhByMonth) {
    if (!(kwh >= 0 && kwh <= usableKwh)) {
      throw new RangeError(`${kwh} kWh kept for outages in a battery of ${usableKwh} kWh`);
    }
  }
  const hours = problem.loadKwh.length;
  const floor = new Float64Array(hours + 1);
  const wanted = (h: number) => floorKwhByMonth[monthOf[Math.min(h, hours - 1)]! - 1]!;
  floor[0] = wanted(0);
  const full = { ...problem, floorKwh: floor };
  for (let h = 0; h < hours; h++) {
    const reach = floor[h]! + mostCharge(full, h) * chargeEfficiency;
    floor[h + 1] = Math.min(wanted(h + 1), reach);
  }
  return floor;
}
