import type { BillReading } from './bill-reading';
import type { ExportRule, TariffSeason } from './tariff';
import { named } from './tariff-name';

/** Share of the price of bought power that is paid for sold power when nobody can say. */
export const usualCreditShare = 0.25;

/** Hours that count as evening where the credit changes by the hour: 16:00 to 21:00. */
const EVENING = { from: 16, to: 21 } as const;

/**
 * The rule for what goes out. Not sure: a credit of a quarter of the cheapest price. After California's decision
 * D.22-12-056 (2022) credits of 5 to 8 cents stood against retail prices of 23 to 30, a share of 0.17 to 0.35.
 */
export function exportFromBill(reading: BillReading, seasons: readonly TariffSeason[]): ExportRule {
  const { kind, price, trueUpMonth = 12 } = reading.export;
  const periods = seasons.flatMap((season) => season.periods);
  if (kind === 'none') return { rule: 'none' };
  if (kind === 'net-metering') {
    const netting = seasons.some((season) => season.periods.length > 1) ? 'by-period' : 'total';
    return { rule: 'net-metering', netting, trueUpMonth, trueUpPrice: price ?? 0 };
  }
  const cheapest = Math.min(...periods.map((p) => p.price));
  const tiers = reading.energy.kind === 'tiers' ? reading.energy.tiers[0]!.price : 0;
  const credit = price ?? usualCreditShare * (cheapest + tiers);
  if (kind === 'by-hour') return byHour(credit, reading.export.eveningPrice ?? credit);
  const all = [{ name: named('all-hours'), price: credit }];
  return {
    rule: 'net-billing',
    seasons: [{ name: named('all-year'), from: '01-01', to: '12-31', periods: all }],
  };
}

/** One average for the evening and one for all other hours, the same in every month. */
function byHour(day: number, evening: number): ExportRule {
  const hours = Array.from({ length: 24 }, (_, h) =>
    h >= EVENING.from && h < EVENING.to ? evening : day,
  );
  return { rule: 'hourly-credit', prices: Array.from({ length: 12 }, () => hours) };
}
