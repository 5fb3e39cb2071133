import type { Hour, Stores } from './stores';
import type { WalkBattery } from './system';

/**
 * One hour of the battery by the rule of `netEnergy`: surplus in, deficit out, idle draw always, the
 * store kept between empty and full. Says in the hour what it left undone.
 */
export function batteryHour(battery: WalkBattery, stores: Stores, hour: Hour): void {
  const { chargeKw, dischargeKw, chargeEfficiency, dischargeEfficiency, idleKw } = battery.limits;
  const { deficitKw } = hour;
  let change: number;
  if (deficitKw <= 0) {
    const stored = chargeEfficiency * Math.min(-deficitKw, chargeKw) - idleKw;
    change = hour.mayCharge ? stored : Math.min(stored, 0);
  } else change = -Math.min(deficitKw, dischargeKw) / dischargeEfficiency - idleKw;
  const next = stores.chargeKwh + change;
  hour.emptyKwh = next < 0 ? -next * dischargeEfficiency : 0;
  hour.overKwh = Math.max(0, deficitKw - dischargeKw);
  stores.chargeKwh = Math.min(Math.max(next, 0), battery.capKwh);
}
