import byState from '#compiled/tables/eia-price-by-state.js';
import trend from '#compiled/tables/eia-price-trend.js';
import type { Table } from '../table';

export interface StatePriceRow {
  /** Two-letter postal code; `US` for the country. */
  state: string;
  name: string;
  centsPerKwh: number;
  centsPerKwh2024: number | null;
  kwhPerMonth: number | null;
  centsPerKwhApril2025: number | null;
  standing: 'published' | 'memory';
}

/** Average residential price by state, cents/kWh of 2023 and, where known, 2024. EIA Electric Power Annual. */
export const priceByState: Table<StatePriceRow> = byState;

/** Average residential price of the US by year, nominal cents/kWh. EIA. */
export const priceTrend: Table<{ year: number; centsPerKwh: number }> = trend;

/** The row of a state by its two letters; the row of the whole country when the state is not known. */
export function statePrice(state: string | null): StatePriceRow {
  const find = (code: string) => priceByState.rows.find((r) => r.state === code);
  return find(state?.toUpperCase() ?? 'US') ?? find('US')!;
}

/** The price of the newest whole year the table has of a state, cents/kWh, and that year. */
export function newestPrice(row: StatePriceRow): { cents: number; year: number } {
  if (row.centsPerKwh2024 !== null) return { cents: row.centsPerKwh2024, year: 2024 };
  return { cents: row.centsPerKwh, year: 2023 };
}

/**
 * Mean yearly growth of the US price between two years of the trend table, a fraction with inflation in it.
 * (p2/p1)^(1/(y2-y1)) - 1. Throws RangeError for a year the table does not hold.
 */
export function priceGrowth({ fromYear, toYear }: { fromYear: number; toYear: number }): number {
  const cents = (year: number) => {
    const row = priceTrend.rows.find((r) => r.year === year);
    if (!row) throw new RangeError(`no price in the trend table for year ${year}`);
    return row.centsPerKwh;
  };
  return (cents(toYear) / cents(fromYear)) ** (1 / (toYear - fromYear)) - 1;
}
