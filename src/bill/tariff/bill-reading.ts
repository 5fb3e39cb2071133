import type { ClockRange, DayKind, TariffTier } from './tariff';

/** What a household reads off a paper bill, all in dollars and kWh; null where the bill does not show it. */
export interface BillReading {
  readonly fixedPerMonth: number | null;
  readonly energy:
    | { readonly kind: 'flat'; readonly price: number }
    | { readonly kind: 'tiers'; readonly tiers: readonly TariffTier[] }
    | ClockPrices;
  readonly demand: {
    readonly perKw: number;
    readonly hours: readonly ClockRange[] | null;
    readonly windowMinutes: 15 | 30 | 60;
    readonly rolling?: boolean;
    readonly ratchet?: { readonly share: number; readonly months: number };
  } | null;
  readonly export: ExportReading;
  /** Lines beside those; missing when nobody asked. */
  readonly more?: MoreLines;
}

export interface ClockPrices {
  readonly kind: 'by-clock';
  /** Dearest first; the price of all other hours is `otherPrice`. */
  readonly periods: readonly {
    readonly is: 'peak' | 'night';
    readonly price: number;
    readonly days: DayKind;
    readonly hours: readonly ClockRange[];
  }[];
  readonly otherPrice: number;
  /** Part of the year these prices hold in; missing, they hold all year. */
  readonly months?: 'summer' | 'winter';
  /** Prices in the rest of the year; missing, the peak hours then cost what all other hours do. */
  readonly rest?: { readonly peak: number; readonly middle: number; readonly low: number };
  /** No peak on the usual holidays. */
  readonly holidaysOff?: boolean;
}

export interface ExportReading {
  readonly kind: 'none' | 'net-metering' | 'credit' | 'by-hour' | 'not-sure';
  /** $/kWh paid for what goes out, or for what is left over at the end of the year; by day, where it changes by hour. */
  readonly price: number | null;
  /** $/kWh from 16:00 to 21:00, where it changes by hour. */
  readonly eveningPrice?: number | null;
  /** 1 to 12. */
  readonly trueUpMonth?: number;
}

/** The smaller lines of a bill; null where there is none or it is not known. */
export interface MoreLines {
  readonly riderPerKwh: number | null;
  readonly riderPerMonth: number | null;
  /** 0.06 for 6 %. */
  readonly taxShare: number | null;
  readonly leastBill: number | null;
  readonly baseline: { readonly creditPerKwh: number; readonly kwhPerDay: number } | null;
  /** Days of the bill that the end of a tier was read from, where it grows with the days. */
  readonly blockDays: number | null;
}
