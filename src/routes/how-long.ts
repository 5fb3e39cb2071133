import type { LoadName } from '../home/loads/load-name';
import type { Figure } from '../quantity/figure';
import type { GeneratorFuel } from '../tables/fuels';

/** What the hours of a route are the hours of. */
export type HoursOf =
  | { readonly code: 'battery-and-fuel' | 'unknown-fuel' | 'vehicle-store' | 'propane-in-tank' }
  | {
      readonly code: 'fuel';
      readonly fuel: GeneratorFuel;
      readonly atHand: Figure;
      readonly inTank: boolean;
    }
  | { readonly code: 'cans-filled'; readonly gallons: number }
  | { readonly code: 'full-pack'; readonly kwh: number }
  /** A battery for one job, by what it carries is called. */
  | { readonly code: 'one-job'; readonly kwh: number; readonly jobs: readonly LoadName[] };

/** How long a route lasts, as a code; `words` says it beside the hours. */
export type HowLong =
  | { readonly code: 'cannot' | 'no-power' | 'needs-no-power' | 'while-fuel' | 'while-street-gas' }
  | { readonly code: 'against-goal'; readonly of: HoursOf; readonly goalHours: number }
  /** A battery in the house, sized by nine outages or nine years in ten. */
  | {
      readonly code: 'full-battery';
      /** The longest outage looked at, where it lasts that long or longer; two weeks or the goal. */
      readonly atLeastHours: number | null;
      readonly byYears: boolean;
      readonly neededKwh: number;
      readonly goalHours: number;
    }
  | { readonly code: 'dark-nights'; readonly restHours: number; readonly goalHours: number }
  | {
      readonly code: 'vehicle-away';
      readonly storeHours: Figure;
      readonly awayHours: number;
      readonly told: boolean;
      readonly goalHours: number;
    };
