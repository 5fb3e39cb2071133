import type { QuickBattery } from '../../bill/calculations';
import { hidesPeak } from '../../bill/tariff/peak-factors';
import type { Tariff } from '../../bill/tariff/tariff';
import type { Input } from './calculation';
import { percentInput } from './percent-input';
import { tariffIn, tariffInputs } from './tariff-input';
import type { Values } from './values';

/** A battery in an ordinary home without solar, and its tariff. */
export const batteryForBills: readonly Input[] = [
  ...tariffInputs,
  {
    kind: 'number',
    key: 'kwh-per-year',
    about: 'use of the home in a year',
    unit: 'kWh',
    from: 100,
    to: 100_000,
  },
  { kind: 'number', key: 'usable', about: 'usable energy', unit: 'kWh', from: 0.5, to: 200 },
  { kind: 'number', key: 'power', about: 'charge and discharge', unit: 'kW', from: 0.1, to: 100 },
  percentInput({ key: 'round-trip', about: 'out over in', from: 40, assumed: 85 }),
  {
    kind: 'number',
    key: 'wear',
    about: 'wear of the battery for each kWh out',
    unit: 'c/kWh',
    from: 0,
    to: 200,
    assumed: 0,
  },
  percentInput({ key: 'kept', about: 'share kept for outages', from: 0, assumed: 20 }),
];

/** The battery of those inputs, or the reason why their tariff is none. */
export function batteryIn(values: Values): (QuickBattery & { keptShare: number }) | string {
  const tariff = tariffIn(values);
  if (typeof tariff === 'string') return tariff;
  return {
    tariff,
    kwhPerYear: values.number('kwh-per-year'),
    usableKwh: values.number('usable'),
    kw: values.number('power'),
    roundTripEfficiency: values.number('round-trip') / 100,
    wearPerKwh: values.number('wear') / 100,
    year: values.number('year'),
    keptShare: values.number('kept') / 100,
  };
}

/** A note where a demand charge goes by a peak that hours do not show. */
export function sayHiddenPeak({ demand = [] }: Tariff): string[] {
  return demand.some(hidesPeak)
    ? [
        'The peak of the demand charge cannot be told from hours: the highest hour is counted, and the real peak may be higher.',
      ]
    : [];
}
