import { priceByState, priceTrend } from '../../tables/prices/electricity-price';
import { equipmentCosts } from '../../tables/prices/equipment-costs';
import { fuelPrices } from '../../tables/prices/fuel-prices';
import { endedIncentives } from '../../tables/prices/incentives';

/** What a table of prices is about. */
export type PriceKind = 'equipment' | 'fuel' | 'power' | 'credits';

/** Prices that were to be looked at again before the day of the plan. */
export interface GrownOld {
  readonly prices: PriceKind;
  /** Days, YYYY-MM-DD: last compared with the source, and to be compared again. */
  readonly checked: string;
  readonly recheckAfter: string;
}

const tables = [
  ['equipment', equipmentCosts],
  ['fuel', fuelPrices],
  ['power', priceByState],
  ['power', priceTrend],
  ['credits', endedIncentives],
] as const;

/**
 * The prices that have grown old by the day of the plan, each sort once.
 * @param asOf YYYY-MM-DD; days written so compare as text
 */
export function grownOld(asOf: string): GrownOld[] {
  const old = tables.filter(([, table]) => asOf > table.recheckAfter);
  const byKind = new Map(
    old.map(([prices, { checked, recheckAfter }]) => [prices, { prices, checked, recheckAfter }]),
  );
  return [...byKind.values()];
}
