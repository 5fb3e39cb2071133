import type { ClockRange, DayKind, ExportRule, Tariff, TariffPeriod, TariffTier } from './tariff';

/** What a household reads off a paper bill, all in dollars and kWh; null where the bill does not show it. */
export interface BillReading {
  readonly fixedPerMonth: number | null;
  readonly energy:
    | { readonly kind: 'flat'; readonly price: number }
    | { readonly kind: 'tiers'; readonly tiers: readonly TariffTier[] }
    | {
        readonly kind: 'by-clock';
        /** Dearest first; the price of all other hours is `otherPrice`. */
        readonly periods: readonly {
          readonly name: string;
          readonly price: number;
          readonly days: DayKind;
          readonly hours: readonly ClockRange[];
        }[];
        readonly otherPrice: number;
      };
  readonly demand: { readonly perKw: number; readonly hours: readonly ClockRange[] | null } | null;
  readonly export: {
    readonly kind: 'none' | 'net-metering' | 'credit' | 'not-sure';
    /** $/kWh paid for what goes out, where the bill shows it. */
    readonly price: number | null;
  };
}

/** Share of the price of bought power that is paid for sold power when nobody can say. */
export const usualCreditShare = 0.25;

/** A tariff from what is printed on a bill; the household's words for what it leaves out. */
export function tariffFromBill(reading: BillReading): Tariff {
  const { energy } = reading;
  const periods: TariffPeriod[] =
    energy.kind === 'by-clock'
      ? [...energy.periods, { name: 'all other hours', price: energy.otherPrice }]
      : [{ name: 'all hours', price: energy.kind === 'flat' ? energy.price : 0 }];
  const season = { name: 'all year', from: '01-01', to: '12-31', periods };
  const demand = reading.demand && {
    name: 'highest use',
    windowMinutes: 60 as const,
    ...(reading.demand.hours && { days: 'weekdays' as const, hours: reading.demand.hours }),
    prices: [{ from: '01-01', to: '12-31', perKw: reading.demand.perKw }],
  };
  return {
    name: 'From your bill',
    fixed: { perMonth: reading.fixedPerMonth ?? 0 },
    seasons: [energy.kind === 'tiers' ? { ...season, tiers: energy.tiers } : season],
    ...(energy.kind === 'tiers' && { tierBasis: 'month' as const }),
    ...(demand && { demand: [demand] }),
    export: exportRule(reading, periods),
    creditFloor: 'fixed',
  };
}

/**
 * Not sure: a credit of a quarter of the cheapest price. After California's decision D.22-12-056 (2022) credits of
 * 5 to 8 cents stood against retail prices of 23 to 30, a share of 0.17 to 0.35.
 */
function exportRule(reading: BillReading, periods: readonly TariffPeriod[]): ExportRule {
  const { kind, price } = reading.export;
  if (kind === 'none') return { rule: 'none' };
  if (kind === 'net-metering') {
    const netting = periods.length > 1 ? 'by-period' : 'total';
    return { rule: 'net-metering', netting, trueUpMonth: 12, trueUpPrice: price ?? 0 };
  }
  const cheapest = Math.min(...periods.map((p) => p.price));
  const tiers = reading.energy.kind === 'tiers' ? reading.energy.tiers[0]!.price : 0;
  const credit = price ?? usualCreditShare * (cheapest + tiers);
  const all = [{ name: 'all hours', price: credit }];
  return {
    rule: 'net-billing',
    seasons: [{ name: 'all year', from: '01-01', to: '12-31', periods: all }],
  };
}
