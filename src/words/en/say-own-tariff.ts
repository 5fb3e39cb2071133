import type { Tariff } from '../../bill/tariff/tariff';
import { listOf } from './list-of';
import { sayTariffName } from './tariff/say-tariff-name';

const rules: Readonly<Record<Tariff['export']['rule'], string>> = {
  none: 'nothing for solar sent out',
  'net-metering': 'net metering',
  'net-billing': 'a credit for solar sent out',
  'hourly-credit': 'a credit by the hour for solar sent out',
};

/** A tariff the household gave in full, named with what it holds. */
export function sayOwnTariff(tariff: Tariff): string {
  const { seasons, demand = [], riders = [], taxes = [] } = tariff;
  const prices = seasons.flatMap(({ periods, tiers = [] }) => {
    const lowest = tiers.length > 0 ? tiers : [{ price: 0 }];
    return periods.flatMap(({ price }) => lowest.map((tier) => 100 * (price + tier.price)));
  });
  const [low, high] = [Math.min(...prices), Math.max(...prices)];
  const range =
    high - low < 0.05
      ? `${low.toFixed(1)} cents a kWh`
      : `${low.toFixed(1)} to ${high.toFixed(1)} cents a kWh`;
  const parts = [
    seasons.length > 1 ? `${range} in ${seasons.length} seasons` : range,
    ...(seasons.some((season) => season.tiers !== undefined) ? ['prices by the amount'] : []),
    ...(tariff.baselineCredit === undefined ? [] : ['a baseline credit']),
    ...(tariff.minimumBill === undefined
      ? []
      : [
          `a least bill of $${tariff.minimumBill} ${tariff.minimumBillTax === 'after' ? 'with' : 'before'} tax`,
        ]),
    ...demand.map(({ name }) => `a demand charge (${sayTariffName(name)})`),
    ...riders.map(({ name }) => sayTariffName(name)),
    ...taxes.map(
      ({ name, share }) => `${sayTariffName(name)} of ${Number((100 * share).toFixed(2))} %`,
    ),
    rules[tariff.export.rule],
  ];
  return `Counted with your own tariff, "${sayTariffName(tariff.name)}": ${listOf(parts)}. It stands in full in the home file and in the plan file, and goes before your answers about prices.`;
}
