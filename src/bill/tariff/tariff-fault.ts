import type { TariffName } from './tariff-name';

/** Where in the form of a tariff. */
export type TariffPath = readonly (string | number)[];

/** Something wrong in a tariff, and where. */
export interface TariffFault {
  readonly path: TariffPath;
  readonly problem: TariffProblem | ShapeProblem | FileProblem;
}

/** A day of the year and an hour of the clock, as they are doubled or left out. */
export interface DayOfYear {
  readonly month: number;
  readonly dayOfMonth: number;
}

/** What is wrong with a tariff whose form is right; names are those it gives. */
export type TariffProblem =
  | { readonly code: 'no-season-covers'; readonly list: readonly string[]; readonly day: DayOfYear }
  | {
      readonly code: 'seasons-overlap';
      readonly list: readonly string[];
      readonly seasons: readonly TariffName[];
      readonly day: DayOfYear;
    }
  | ({ readonly code: 'no-period-covers' } & InHour)
  | ({ readonly code: 'periods-overlap'; readonly periods: readonly TariffName[] } & InHour)
  | { readonly code: 'last-tier-has-end'; readonly season: TariffName }
  | { readonly code: 'tier-without-end'; readonly season: TariffName; readonly tier: number }
  | {
      readonly code: 'tiers-out-of-order';
      readonly season: TariffName;
      readonly tier: number;
      readonly kwh: number;
      readonly beforeKwh: number;
    }
  | { readonly code: 'tier-basis-missing'; readonly season: TariffName }
  | { readonly code: 'demand-prices-overlap'; readonly charge: TariffName; readonly day: DayOfYear }
  | {
      readonly code: 'holiday-not-known';
      readonly holiday: string;
      readonly known: readonly string[];
    }
  | { readonly code: 'netting-by-period'; readonly season: TariffName; readonly periods: number }
  | {
      readonly code: 'period-of-no-hours';
      readonly season: TariffName;
      readonly period: TariffName;
      readonly hour: number;
    }
  /** $/kWh; nobody pays so much, so cents were meant. */
  | { readonly code: 'price-in-cents'; readonly price: number };

interface InHour {
  readonly season: TariffName;
  /** 0 to 23. */
  readonly hour: number;
  readonly weekend: boolean;
}

/** What a form of tariffs asks for that is not there, or not so. */
export type ShapeProblem =
  | { readonly code: 'no-such-key'; readonly key: string }
  | { readonly code: 'wrong-type'; readonly expected: string; readonly missing: boolean }
  | { readonly code: 'not-one-of'; readonly options: readonly string[]; readonly missing: boolean }
  | {
      readonly code: 'out-of-bounds';
      readonly of: 'list' | 'text' | 'number';
      readonly end: 'at-least' | 'at-most';
      readonly bound: number;
      /** A list has just so many; a number may not be the bound itself. */
      readonly exact: boolean;
      readonly inclusive: boolean;
    }
  | { readonly code: 'not-a-day' }
  /** In the words of the library that read it. */
  | { readonly code: 'other'; readonly message: string };

/** What a file of a tariff of its own starts with. */
export type FileProblem =
  | { readonly code: 'no-tariff-file'; readonly firstLine: string }
  | { readonly code: 'first-line-missing'; readonly firstLine: string }
  | { readonly code: 'other-form'; readonly found: string; readonly reads: number };
