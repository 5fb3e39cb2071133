import type { TariffName } from './tariff-name';

/** Which days a period holds on. A holiday named by the tariff counts as a weekend day. */
export type DayKind = 'every' | 'weekdays' | 'weekends';

/** Part of the day: `[16, 21]` is 16:00 to 21:00 local clock time; `[21, 6]` runs past midnight. */
export type ClockRange = readonly [number, number];

/** A price by the clock. A period with no `hours` holds in all hours no other period names. */
export interface TariffPeriod<Name = TariffName> {
  readonly name: Name;
  /** $/kWh; may be negative. */
  readonly price: number;
  readonly days?: DayKind;
  readonly hours?: readonly ClockRange[];
}

/** A price by the amount used so far. The last tier has no `upToKwh`. */
export interface TariffTier {
  /** End of the tier, kWh counted from zero, per day or per month as `tierBasis` says. */
  readonly upToKwh?: number;
  /** $/kWh, added to the price by the clock where a tariff has both. */
  readonly price: number;
}

export interface TariffSeason<Name = TariffName> {
  readonly name: Name;
  /** First and last day, MM-DD; may run over New Year. */
  readonly from: string;
  readonly to: string;
  readonly periods: readonly TariffPeriod<Name>[];
  readonly tiers?: readonly TariffTier[];
  readonly baselineKwhPerDay?: number;
}

export interface DemandCharge<Name = TariffName> {
  readonly name: Name;
  /** Length of the averaging window that sets the peak. */
  readonly windowMinutes: 15 | 30 | 60;
  /** Any so many minutes in a row count, not only those of the clock. */
  readonly rolling?: boolean;
  readonly days?: DayKind;
  readonly hours?: readonly ClockRange[];
  readonly prices: readonly { from: string; to: string; perKw: number }[];
  /** The billed peak is at least `share` of the highest of the last `months` months. */
  readonly ratchet?: { readonly share: number; readonly months: number };
}

export interface Rider<Name = TariffName> {
  readonly name: Name;
  readonly perKwh?: number;
  readonly perMonth?: number;
  /** Share of the energy charge, 0.05 for 5 %. */
  readonly shareOfEnergy?: number;
}

export interface Tax<Name = TariffName> {
  readonly name: Name;
  readonly share: number;
  /** `charges`: before export credit. `bill`: after it. */
  readonly on: 'charges' | 'bill';
}

export type ExportRule<Name = TariffName> =
  | { readonly rule: 'none' }
  | {
      readonly rule: 'net-metering';
      /** `total` nets all kWh of the month and banks kWh; `by-period` nets each period and banks dollars,
       * which end at the true-up. */
      readonly netting: 'total' | 'by-period';
      readonly trueUpMonth: number;
      readonly trueUpPrice: number;
    }
  | { readonly rule: 'net-billing'; readonly seasons: readonly TariffSeason<Name>[] }
  | {
      readonly rule: 'hourly-credit';
      /** $/kWh by month (12) and hour (24). */
      readonly prices: readonly (readonly number[])[];
    };

/**
 * How a household pays for electricity. All money in dollars with no tax unless a tax is named. One that somebody
 * wrote, or that is written out, has names alone: `Tariff<string>`.
 */
export interface Tariff<Name = TariffName> {
  readonly name: Name;
  readonly about?: string;
  /** MM-DD or a name of us-holidays.ts. */
  readonly holidays?: readonly string[];
  readonly fixed: { readonly perMonth?: number; readonly perDay?: number };
  /** Least amount of a month's bill, $. */
  readonly minimumBill?: number;
  /** Whether tax comes on top of the least bill (`before`, usual and taken where missing) or is in it (`after`). */
  readonly minimumBillTax?: 'before' | 'after';
  readonly seasons: readonly TariffSeason<Name>[];
  readonly tierBasis?: 'day' | 'month';
  /** A month's tier ends are scaled by days / this; missing, they hold for any month. */
  readonly tierProrateDays?: number;
  /** $/kWh taken off imports up to the season's baseline. */
  readonly baselineCredit?: number;
  readonly demand?: readonly DemandCharge<Name>[];
  readonly riders?: readonly Rider<Name>[];
  readonly taxes?: readonly Tax<Name>[];
  readonly export: ExportRule<Name>;
  /** What export credit may not pay; the rest is carried. Missing: credit pays all and the bill may go below zero. */
  readonly creditFloor?: 'fixed' | 'fixed-and-demand';
}
