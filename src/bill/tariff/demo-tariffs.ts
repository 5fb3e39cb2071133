import rows from '#compiled/tables/demo-tariffs.js';
import type { Table } from '../../tables/table';
import type { Tariff } from './tariff';

/** Four invented tariffs: A flat, B two periods, C three periods with seasons and baseline, D demand charge. */
export const demoTariffs: Table<Tariff> = rows;

/** A demo tariff by its letter, A to D. */
export function demoTariff(letter: 'A' | 'B' | 'C' | 'D'): Tariff {
  return demoTariffs.rows.find((t) => t.name.startsWith(`Demo ${letter}`))!;
}
