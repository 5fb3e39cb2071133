import type { LoadId } from '../../home/loads/load-id';

/** How a quote moves the house from the grid to the backup. */
export type QuotedTransfer = 'none' | 'interlock' | 'transfer-switch' | 'automatic';

/** A quote that came back, in ten lines; null where it does not say. */
export interface Quote {
  /** In all, with permit and work, $. */
  readonly priceUsd: number | null;
  /** Of the battery, as it can be used, kWh. */
  readonly usableKwh: number | null;
  /** For as long as wanted, W. */
  readonly continuousWatts: number | null;
  /** For the moment of a start, VA. */
  readonly startingVa: number | null;
  readonly transfer: QuotedTransfer | null;
  /** Circuits of the sheet it does not carry. */
  readonly leavesOut: readonly LoadId[] | null;
  /** Permit and inspection are in the price. */
  readonly permitIncluded: boolean | null;
  /** The license and the insurance of who does the work are named. */
  readonly licenseNamed: boolean | null;
  readonly warrantyYears: number | null;
  /** Until it works, weeks. */
  readonly weeks: number | null;
}

/** A line of the quote beside the plan. */
export type QuoteLine = keyof Quote;
