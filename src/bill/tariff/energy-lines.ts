import type { BillLine, LineIs } from './bill-line';
import type { Tariff, TariffSeason } from './tariff';

export interface SeasonUse {
  readonly season: TariffSeason;
  /** Days of the billing month in this season, and of the whole month. */
  readonly days: number;
  readonly monthDays: number;
  /** kWh charged in each period of the season, in the order of `season.periods`. */
  readonly kwh: readonly number[];
}

/** The energy lines of one season of a month: prices by the clock, prices by the amount, baseline credit. */
export function energyLines(tariff: Tariff, use: SeasonUse): BillLine[] {
  const total = use.kwh.reduce((sum, kwh) => sum + kwh, 0);
  return [
    ...clockLines(tariff, use),
    ...tierLines(tariff, use, total),
    ...baseline(tariff, use, total),
  ];
}

function clockLines(tariff: Tariff, use: SeasonUse): BillLine[] {
  const { season } = use;
  const named = tariff.seasons.length > 1 ? season.name : null;
  return season.periods.flatMap((period, i) => {
    const kwh = use.kwh[i]!;
    // A tariff whose whole price is by the amount has a clock price of 0: no line on paper.
    if (season.tiers && period.price === 0) return [];
    const is = { code: 'energy-period', season: named, period: period.name } as const;
    return [energyLine(is, kwh, period.price)];
  });
}

function tierLines(tariff: Tariff, use: SeasonUse, total: number): BillLine[] {
  const scale = tierScale(tariff, use);
  let start = 0;
  return (use.season.tiers ?? []).flatMap((tier, i) => {
    const end = tier.upToKwh === undefined ? Number.POSITIVE_INFINITY : tier.upToKwh * scale;
    const kwh = Math.max(0, Math.min(total, end) - start);
    start = end;
    return kwh > 0 ? [energyLine({ code: 'energy-tier', tier: i + 1 }, kwh, tier.price)] : [];
  });
}

/**
 * What a tier's end is multiplied by for this part of a billing month. Per day: days. Per month: the part of the
 * month in this season, times days / tierProrateDays where the tariff prorates.
 */
export function tierScale(tariff: Tariff, use: { days: number; monthDays: number }): number {
  if (tariff.tierBasis === 'day') return use.days;
  const part = use.days / use.monthDays;
  return tariff.tierProrateDays ? (part * use.monthDays) / tariff.tierProrateDays : part;
}

function baseline(tariff: Tariff, use: SeasonUse, total: number): BillLine[] {
  const perDay = use.season.baselineKwhPerDay;
  if (tariff.baselineCredit === undefined || perDay === undefined) return [];
  const kwh = Math.min(total, perDay * use.days);
  const price = -tariff.baselineCredit;
  const is = { code: 'baseline-credit', season: use.season.name } as const;
  return [{ kind: 'baseline', is, quantity: kwh, unit: 'kWh', price, dollars: kwh * price }];
}

function energyLine(is: LineIs, kwh: number, price: number): BillLine {
  return { kind: 'energy', is, quantity: kwh, unit: 'kWh', price, dollars: kwh * price };
}
