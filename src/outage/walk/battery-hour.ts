import type { Stores } from './stores';
import type { WalkBattery } from './system';

/** What the battery left undone in an hour, kWh at the house. */
export interface Shortfall {
  /** Its store ran out. */
  emptyKwh: number;
  /** More was wanted than the inverter gives. */
  overKwh: number;
}

/**
 * One hour of the battery by the rule of `netEnergy`: surplus in, deficit out, idle draw always, the
 * store kept between empty and full.
 */
export function batteryHour(
  battery: WalkBattery,
  stores: Stores,
  { deficitKw, mayCharge }: { deficitKw: number; mayCharge: boolean },
  shortfall: Shortfall,
): void {
  const { chargeKw, dischargeKw, chargeEfficiency, dischargeEfficiency, idleKw } = battery.limits;
  let change: number;
  if (deficitKw <= 0) {
    const stored = chargeEfficiency * Math.min(-deficitKw, chargeKw) - idleKw;
    change = mayCharge ? stored : Math.min(stored, 0);
  } else change = -Math.min(deficitKw, dischargeKw) / dischargeEfficiency - idleKw;
  const next = stores.chargeKwh + change;
  shortfall.emptyKwh = next < 0 ? -next * dischargeEfficiency : 0;
  shortfall.overKwh = Math.max(0, deficitKw - dischargeKw);
  stores.chargeKwh = Math.min(Math.max(next, 0), battery.capKwh);
}
