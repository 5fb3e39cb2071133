import type { Tariff } from './tariff';
import type { TariffHours } from './tariff-hours';

/** What a dollar and a kWh of the printed prices come to on the bill, once riders and taxes are on them. */
export interface PriceWorth {
  /** Times a price of energy. */
  readonly energyFactor: number;
  /** Added to a kWh that is charged, $/kWh. */
  readonly perKwh: number;
  /** Times a demand price. */
  readonly demandFactor: number;
  /** Times a credit for what goes out. */
  readonly creditFactor: number;
}

/**
 * A kWh charged at a printed price p costs
 *   (p (1 + riders on energy) + riders per kWh) (1 + tax on charges) (1 + tax on the bill)
 * A credit is lessened by no rider, and only a tax on what is left of the bill goes by it.
 */
export function priceWorth({ riders = [], taxes = [] }: Tariff): PriceWorth {
  const share = (on: 'charges' | 'bill') =>
    taxes.reduce((sum, tax) => (tax.on === on ? sum + tax.share : sum), 0);
  const taxed = (1 + share('charges')) * (1 + share('bill'));
  const onEnergy = riders.reduce((sum, rider) => sum + (rider.shareOfEnergy ?? 0), 0);
  const perKwh = riders.reduce((sum, rider) => sum + (rider.perKwh ?? 0), 0);
  return {
    energyFactor: (1 + onEnergy) * taxed,
    perKwh: perKwh * taxed,
    demandFactor: taxed,
    creditFactor: 1 + share('bill'),
  };
}

/** Hourly prices as they come to on the bill, $/kWh: bought, and sent out. Net metering sets one against the other. */
export function hourlyWorth(
  tariff: Tariff,
  layout: TariffHours,
): { importPrice: Float64Array; exportPrice: Float64Array } {
  const { energyFactor, perKwh, creditFactor } = priceWorth(tariff);
  const importPrice = layout.importPrice.map((price) => price * energyFactor + perKwh);
  if (tariff.export.rule === 'net-metering') return { importPrice, exportPrice: importPrice };
  return { importPrice, exportPrice: layout.exportPrice.map((price) => price * creditFactor) };
}
