import { type ByMonth, meanByMonth } from './by-month';
import { type ChargeNeeded, chargeForEveryStart } from './every-start';

export interface UnservedInput {
  readonly netKwh: Float64Array;
  readonly overloadKwh: Float64Array;
  readonly capKwh: number;
  readonly startKwh: number;
  readonly outageHours: number;
  /** From stored to delivered: turns what the store lacks into what the house lacks. */
  readonly dischargeEfficiency: number;
  /** `chargeForEveryStart` of the same record, length and store, where it is known already. */
  readonly charge?: ChargeNeeded;
}

/**
 * Mean energy the house goes without in an outage of the given length, kWh at the house, by month of
 * its start: (V + max(0, S - x)) eta_d for the empty store, plus what the power limit cut off.
 */
export function unservedByMonth(input: UnservedInput): ByMonth {
  const { netKwh, overloadKwh, capKwh, startKwh, outageHours, dischargeEfficiency } = input;
  const needed = input.charge ?? chargeForEveryStart(netKwh, outageHours, capKwh);
  const count = needed.thresholdKwh.length;
  const sums = new Float64Array(overloadKwh.length + 1);
  for (let t = 0; t < overloadKwh.length; t++) sums[t + 1] = sums[t]! + overloadKwh[t]!;
  const cutOff = (start: number) => {
    const end = start + outageHours;
    return end <= count
      ? sums[end]! - sums[start]!
      : sums[count]! - sums[start]! + sums[end - count]!;
  };
  return meanByMonth(count, (start) => {
    const empty =
      needed.unavoidableKwh[start]! + Math.max(0, needed.thresholdKwh[start]! - startKwh);
    return empty * dischargeEfficiency + cutOff(start);
  });
}
