import rows from '#compiled/tables/demo-tariffs.js';
import type { Table } from '../../tables/table';
import type { Tariff } from './tariff';
import type { PlainTariffCode } from './tariff-name';

type DemoTariff = Tariff & { readonly name: { readonly code: PlainTariffCode } };

/** Four invented tariffs: A flat, B two periods, C three periods with seasons and baseline, D demand charge. */
export const demoTariffs: Table<DemoTariff> = rows;

const codes = {
  A: 'demo-flat',
  B: 'demo-two-periods',
  C: 'demo-three-periods',
  D: 'demo-demand-charge',
} as const satisfies Record<string, PlainTariffCode>;

/** A demo tariff by its letter. */
export function demoTariff(letter: keyof typeof codes): Tariff {
  return demoTariffs.rows.find((tariff) => tariff.name.code === codes[letter])!;
}
