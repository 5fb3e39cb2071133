import prices from '#compiled/tables/fuel-prices.js';
import type { GeneratorFuel } from '../fuels';
import type { Table } from '../table';

export interface FuelPriceRow {
  fuel: GeneratorFuel;
  unit: 'gal' | 'ft3';
  low: number;
  likely: number;
  high: number;
}

/** Retail price of generator fuel, $ per unit. From memory. */
export const fuelPrices: Table<FuelPriceRow> = prices;

/** The price of one fuel; null for what is not sold by the unit. */
export function fuelPrice(fuel: string): FuelPriceRow | null {
  return fuelPrices.rows.find((row) => row.fuel === fuel) ?? null;
}
