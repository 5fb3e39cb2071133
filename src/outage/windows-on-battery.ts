import { NEGLIGIBLE_KWH } from './every-start';
import type { NetEnergy } from './net-energy';

/**
 * Outages of one length, each from a full store of `capKwh`, by the fall of the running net-energy sum
 * (as `DrawdownPass`): an hour in which it passes the store, or more is wanted than the inverter gives, ends the outage.
 * @returns whole hours served in each
 * @param windows net energy of the outages' hours, one outage after the other
 */
export function hoursOnBattery(windows: NetEnergy, hours: number, capKwh: number): Float64Array {
  const { netKwh, overloadKwh } = windows;
  const served = new Float64Array(netKwh.length / hours);
  const full = capKwh + NEGLIGIBLE_KWH;
  for (let i = 0; i < served.length; i++) {
    let fall = 0;
    let h = 0;
    for (let at = i * hours; h < hours; h++, at++) {
      const a = netKwh[at]!;
      fall = fall > a ? fall - a : 0;
      if (fall > full || overloadKwh[at]! > NEGLIGIBLE_KWH) break;
    }
    served[i] = h;
  }
  return served;
}
