import type { Season } from '../../home/home';
import type { RouteTitle } from '../../kinds/route-title';
import type { TransferTime } from '../../routes/transfer-time';

/** Low, likely and high end of a need. */
export interface Range {
  readonly low: number;
  readonly value: number;
  readonly high: number;
}

/** The job in a line. */
export interface ScopePurpose {
  readonly hours: number;
  readonly seasons: readonly Season[];
  readonly called: RouteTitle;
}

/** What the equipment must meet; listing standards by number, for marks are asked for and not brands. */
export type ScopeRequirement =
  | {
      readonly code:
        | 'volts-240'
        | 'volts-120'
        | 'transfer-listed'
        | 'storage-listed'
        | 'fixed-generator-listed'
        | 'portable-generator-listed'
        | 'panels-listed';
    }
  | {
      readonly code: 'continuous';
      readonly watts: Range;
      readonly elevationFt: number;
      readonly hotF: number;
    }
  | { readonly code: 'momentary'; readonly va: Range }
  /** `besideKwh`: on the label of the battery that is there and goes on being used; null where none is. */
  | { readonly code: 'usable-energy'; readonly kwh: number; readonly besideKwh: number | null }
  /** What is there already and is not quoted: on its label, and what of it counts at its age. */
  | { readonly code: 'battery-there'; readonly labelKwh: number; readonly usableKwh: number }
  | { readonly code: 'panels-there'; readonly kw: number }
  | { readonly code: 'gap'; readonly transferTime: TransferTime }
  | { readonly code: 'outdoor-air'; readonly coldF: number; readonly hotF: number };

/** What the quote must state. */
export type QuotePoint =
  | 'load-calculation'
  | 'exhaust-and-fuel'
  | 'panel-rows'
  | 'bus-way'
  | 'battery-facts'
  | 'facts-of-battery-there'
  | 'transfer-equipment'
  | 'circuits-moved'
  | 'loads-shed'
  | 'largest-motor'
  | 'permit-and-fees'
  | 'commissioning'
  | 'price-of-unmet';

/** What to look at on site. */
export type SiteQuestion =
  | 'main-breaker'
  | 'bus-rating'
  | 'panel-kind'
  | 'free-spaces'
  | 'circuit-labels'
  | 'neutral-bond'
  | 'shared-neutrals'
  | 'battery-distances'
  | 'solar-side';
