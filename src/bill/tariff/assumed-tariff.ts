import { type Figure, figure } from '../../quantity/figure';
import { newestPrice, priceByState, statePrice } from '../../tables/prices/electricity-price';
import { citeTable } from '../../tables/table';
import type { Tariff } from './tariff';
import { tariffFromBill } from './tariff-from-bill';

/**
 * The tariff when the household has no bill at hand: one price at all hours, the average of its state, which already
 * holds the fixed charge. The true price may well lie a quarter away; a price by the clock cannot be guessed.
 */
export function assumedTariff(state: string | null): { tariff: Tariff; price: Figure } {
  const row = statePrice(state);
  const { cents, year } = newestPrice(row);
  const value = cents / 100;
  const price = figure({
    value,
    low: 0.75 * value,
    high: Math.max(1.25 * value, (1.1 * (row.centsPerKwhApril2025 ?? 0)) / 100),
    unit: '$/kWh',
    name: { code: 'average-price', state: row.name },
    source: {
      kind: 'assumed',
      is: {
        code: 'state-average',
        state: row.name,
        year,
        laterCents: row.centsPerKwhApril2025,
      },
      cite: row.standing === 'memory' ? ['from-memory-not-re-read'] : citeTable(priceByState),
    },
  });
  const tariff = tariffFromBill({
    fixedPerMonth: null,
    energy: { kind: 'flat', price: value },
    demand: null,
    export: { kind: 'not-sure', price: null },
  });
  return { tariff: { ...tariff, name: { code: 'state-average', state: row.name } }, price };
}
