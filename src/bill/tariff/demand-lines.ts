import type { BillLine, PeakFrom } from './bill-line';
import type { MeteredHours } from './month-kwh';
import { hidesPeak, type PeakFactors } from './peak-factors';
import type { DemandCharge, Tariff } from './tariff';

/** What a charge bills in a month, kW and $/kW, and what its peak was taken from. */
export interface MonthPeak {
  readonly kw: number;
  readonly perKw: number;
  /** What the highest hour was multiplied by; null where that is not known. */
  readonly factor: number | null;
}

/**
 * Peak import of a month that counts for each demand charge. Hourly figures cannot see a shorter window:
 * `peakFactors` says for each charge what the highest hour is multiplied by; null where nobody knows.
 */
export function monthPeaks(
  tariff: Tariff,
  metered: MeteredHours & { peakFactors?: PeakFactors },
): MonthPeak[] {
  const { layout, from, to, importKwh, peakFactors } = metered;
  return (tariff.demand ?? []).map((_, i) => {
    const prices = layout.demandPrice[i]!;
    let kw = 0;
    let perKw = 0;
    for (let h = from; h < to; h++) {
      if (prices[h] === 0) continue;
      perKw = Math.max(perKw, prices[h]!);
      kw = Math.max(kw, importKwh[h]!);
    }
    const factor = peakFactors?.[i] ?? null;
    return { kw: kw * (factor ?? 1), perKw, factor };
  });
}

/** The peak that is billed: the month's own, or the ratchet's share of the highest recent month. */
export function billedPeak(charge: DemandCharge, kw: number, pastKw: readonly number[]): number {
  if (!charge.ratchet) return kw;
  const recent = pastKw.slice(-charge.ratchet.months);
  return Math.max(kw, charge.ratchet.share * Math.max(0, ...recent));
}

/** The demand lines of a month. `past` holds the peaks of earlier months for each charge. */
export function demandLines(
  tariff: Tariff,
  peaks: readonly MonthPeak[],
  past: readonly (readonly number[])[],
): BillLine[] {
  return (tariff.demand ?? []).flatMap((charge, i) => {
    const { kw, perKw, factor } = peaks[i]!;
    if (perKw === 0) return [];
    const billed = billedPeak(charge, kw, past[i] ?? []);
    const peak = peakFrom(charge, factor);
    return [
      {
        kind: 'demand',
        is: { code: 'demand', charge: charge.name, peak, heldUp: billed > kw },
        quantity: billed,
        unit: 'kW',
        price: perKw,
        dollars: billed * perKw,
      },
    ];
  });
}

/** Never silently: how the peak was come by, where an hour does not show it. */
function peakFrom(charge: DemandCharge, factor: number | null): PeakFrom {
  if (factor !== null && Math.abs(factor - 1) > 0.005) return { code: 'times-factor', factor };
  if (factor !== null || !hidesPeak(charge)) return { code: 'highest-hour' };
  return { code: 'shorter-not-known', windowMinutes: charge.windowMinutes };
}
