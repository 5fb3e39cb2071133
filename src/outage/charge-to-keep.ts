import { type ChargeNeeded, chargeToStartWith } from './every-start';
import { monthOfHour } from './month-of-hour';
import { quantileInPlace } from './quantile';

/** Charge for each asked share, by month of the start; `null`: a full store would not do. */
export interface ChargeToKeep {
  readonly share: number;
  /** 12 entries, January first, kWh. */
  readonly months: readonly (number | null)[];
}

/**
 * How full to keep the store month by month, so that `share` of the outages starting in that month
 * ride through: the quantile of the charge needed over the month's start hours in all years. Shares
 * 0.5, 0.9 and 1 are the middle, the one in ten and the worst case. A month with no hour: `null`.
 */
export function chargeToKeep(
  needed: ChargeNeeded,
  capKwh: number,
  shares: readonly number[] = [0.5, 0.9, 1],
): ChargeToKeep[] {
  const months = byMonth(needed, capKwh);
  return shares.map((share) => ({
    share,
    months: months.map((charges) => {
      const kwh = quantileInPlace(charges, share);
      return kwh === null || kwh === Infinity ? null : kwh;
    }),
  }));
}

/** The needed charges month by month; Infinity marks the starts no charge is enough for. */
function byMonth({ thresholdKwh, unavoidableKwh }: ChargeNeeded, capKwh: number): Float64Array[] {
  const counts = new Uint32Array(12);
  for (let s = 0; s < thresholdKwh.length; s++) counts[monthOfHour(s)]! += 1;
  const months = Array.from(counts, (count) => new Float64Array(count));
  const filled = new Uint32Array(12);
  for (let s = 0; s < thresholdKwh.length; s++) {
    const month = monthOfHour(s);
    const kwh = chargeToStartWith(thresholdKwh[s]!, unavoidableKwh[s]!, capKwh);
    months[month]![filled[month]!++] = kwh ?? Infinity;
  }
  return months;
}
