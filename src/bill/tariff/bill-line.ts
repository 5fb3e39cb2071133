import type { TariffName } from './tariff-name';

/** What a line of a bill is; names are those of the tariff. */
export type LineIs =
  | { readonly code: PlainLine }
  /** `season` where the tariff has more than one. */
  | {
      readonly code: 'energy-period';
      readonly season: TariffName | null;
      readonly period: TariffName;
    }
  /** `tier` counts from 1. */
  | { readonly code: 'energy-tier'; readonly tier: number }
  | { readonly code: 'baseline-credit'; readonly season: TariffName }
  | {
      readonly code: 'demand';
      readonly charge: TariffName;
      readonly peak: PeakFrom;
      /** A month before had a higher peak, and its share is billed. */
      readonly heldUp: boolean;
    }
  /** A rider or a tax by its own name. */
  | { readonly code: 'named'; readonly name: TariffName };

export type PlainLine =
  | 'fixed-charge'
  | 'export-credit'
  | 'left-over-in-period'
  | 'yearly-true-up'
  | 'earlier-credit'
  | 'credit-that-ends'
  | 'credit-kept'
  | 'minimum-before-tax'
  | 'minimum-with-tax';

/** How the peak was come by, where an hour does not show it. */
export type PeakFrom =
  | { readonly code: 'highest-hour' }
  | { readonly code: 'times-factor'; readonly factor: number }
  | { readonly code: 'shorter-not-known'; readonly windowMinutes: number };

/** One line of a bill as it stands on paper: quantity times price is dollars, unless the price is missing. */
export interface BillLine {
  readonly kind:
    | 'fixed'
    | 'energy'
    | 'baseline'
    | 'demand'
    | 'rider'
    | 'export'
    | 'tax'
    | 'minimum'
    | 'carried';
  readonly is: LineIs;
  readonly quantity: number | null;
  readonly unit: 'kWh' | 'kW' | 'day' | 'month' | null;
  /** $ per unit. */
  readonly price: number | null;
  /** Negative for a credit. */
  readonly dollars: number;
}

/** Sum of the dollars of some lines, all of them or those of the kinds named. */
export function sumLines(lines: readonly BillLine[], ...kinds: BillLine['kind'][]): number {
  return lines.reduce(
    (sum, line) => (kinds.length === 0 || kinds.includes(line.kind) ? sum + line.dollars : sum),
    0,
  );
}

/** A line of so many units at a price. */
export function line(
  kind: BillLine['kind'],
  is: LineIs | PlainLine,
  given: { quantity: number; unit: NonNullable<BillLine['unit']>; price: number },
): BillLine {
  return { kind, is: asLine(is), ...given, dollars: given.quantity * given.price };
}

/** A line of dollars alone. */
export function amount(kind: BillLine['kind'], is: LineIs | PlainLine, dollars: number): BillLine {
  return { kind, is: asLine(is), quantity: null, unit: null, price: null, dollars };
}

const asLine = (is: LineIs | PlainLine): LineIs => (typeof is === 'string' ? { code: is } : is);
