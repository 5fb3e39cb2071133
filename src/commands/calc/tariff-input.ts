import { demoTariff } from '../../bill/tariff/demo-tariffs';
import type { Tariff } from '../../bill/tariff/tariff';
import { tariffFromBill } from '../../bill/tariff/tariff-from-bill';
import type { Input } from './calculation';
import type { Values } from './values';

/** The name by which a tariff from a file is chosen. */
export const OWN_TARIFF = 'own';

/** A tariff by name, or one price at all hours. */
export const tariffInputs: readonly Input[] = [
  {
    kind: 'choice',
    key: 'tariff',
    about:
      'one price (flat), an invented tariff of two periods, of three periods with seasons, or with a demand charge, or your own from a file (own, with --tariff FILE)',
    choices: ['flat', 'two-prices', 'three-prices', 'highest-use', OWN_TARIFF],
  },
  {
    kind: 'number',
    key: 'price',
    about: 'price of a kWh (flat)',
    unit: 'c/kWh',
    from: 0,
    to: 200,
    optional: true,
  },
  {
    kind: 'number',
    key: 'fixed',
    about: 'fixed charge a month (flat)',
    unit: '$',
    from: 0,
    to: 500,
    optional: true,
  },
  {
    kind: 'number',
    key: 'year',
    about: 'which year, for weekends and holidays',
    unit: 'year',
    from: 2000,
    to: 2100,
    whole: true,
    assumed: 2026,
  },
];

const demos = { 'two-prices': 'B', 'three-prices': 'C', 'highest-use': 'D' } as const;

/** The tariff of those inputs, or the reason why they make none. */
export function tariffIn(values: Values): Tariff | string {
  const name = values.word('tariff');
  const price = values.numberOrNull('price');
  if (name !== 'flat') {
    if (price === null && !values.has('fixed')) return named(name, values);
    return `price and fixed belong to tariff=flat; ${name} has its own.`;
  }
  if (price === null) return 'tariff=flat also needs price.';
  return tariffFromBill({
    fixedPerMonth: values.numberOrNull('fixed'),
    energy: { kind: 'flat', price: price / 100 },
    demand: null,
    export: { kind: 'not-sure', price: null },
  });
}

function named(name: string, { ownTariff }: Values): Tariff | string {
  if (name !== OWN_TARIFF) return demoTariff(demos[name as keyof typeof demos]);
  return ownTariff ?? 'tariff=own also needs a tariff file, such as --tariff my-rate.yaml.';
}
