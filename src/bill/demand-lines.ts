import type { BillLine } from './bill-line';
import type { MeteredHours } from './month-kwh';
import type { DemandCharge, Tariff } from './tariff';

/**
 * Peak import of a month that counts for each demand charge, kW. Hourly figures cannot see a window shorter than an
 * hour: `shortWindowFactor` (1 or more) is how much higher the peak of a 15- or 30-minute window is taken to be.
 */
export function monthPeaks(
  tariff: Tariff,
  metered: MeteredHours & { shortWindowFactor: number },
): { kw: number; perKw: number }[] {
  const { layout, from, to, importKwh, shortWindowFactor } = metered;
  return (tariff.demand ?? []).map((charge, i) => {
    const prices = layout.demandPrice[i]!;
    let kw = 0;
    let perKw = 0;
    for (let h = from; h < to; h++) {
      if (prices[h] === 0) continue;
      perKw = Math.max(perKw, prices[h]!);
      kw = Math.max(kw, importKwh[h]!);
    }
    return { kw: charge.windowMinutes < 60 ? kw * shortWindowFactor : kw, perKw };
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
  peaks: readonly { kw: number; perKw: number }[],
  past: readonly (readonly number[])[],
): BillLine[] {
  return (tariff.demand ?? []).flatMap((charge, i) => {
    const { kw, perKw } = peaks[i]!;
    if (perKw === 0) return [];
    const billed = billedPeak(charge, kw, past[i] ?? []);
    const held = billed > kw ? ' (held up by an earlier month)' : '';
    const label = `Demand, ${charge.name}${held}`;
    return [
      {
        kind: 'demand',
        label,
        quantity: billed,
        unit: 'kW',
        price: perKw,
        dollars: billed * perKw,
      },
    ];
  });
}
