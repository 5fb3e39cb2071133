import type { PlainTariffCode, TariffName } from '../../../bill/tariff/tariff-name';

const plain: Readonly<Record<PlainTariffCode, string>> = {
  'from-bill': 'From your bill',
  'demo-flat': 'Demo A, flat',
  'demo-two-periods': 'Demo B, two periods',
  'demo-three-periods': 'Demo C, three periods by season with baseline',
  'demo-demand-charge': 'Demo D, demand charge',
  'all-year': 'all year',
  summer: 'summer',
  winter: 'winter',
  'rest-of-year': 'rest of the year',
  'all-hours': 'all hours',
  'other-hours': 'all other hours',
  peak: 'peak',
  'on-peak': 'on-peak',
  'off-peak': 'off-peak',
  shoulder: 'shoulder',
  evening: 'evening',
  night: 'night',
  'highest-use': 'highest use',
  'on-peak-use': 'on-peak demand',
  'charge-per-kwh': 'Other charge for each kWh',
  'charge-per-month': 'Other charge each month',
  tax: 'Tax',
};

/** A name of a tariff, its season, period or charge: as it was written by whoever wrote it, or ours in words. */
export function sayTariffName(name: TariffName): string {
  if (typeof name === 'string') return name;
  return name.code === 'state-average' ? `Assumed: average of ${name.state}` : plain[name.code];
}
