import type { Season } from '../home/home';
import type { LoadName } from '../home/loads/load-name';
import type { Figure } from '../quantity/figure';
import type { Stretches } from '../tables/run-hours';
import type { BetweenBlocks } from './kinds/generator-blocks';

/** What is good to know of a route, where it takes no figure. */
export type PlainNote =
  | 'ask-for-pure-sine'
  | 'beside-any-larger-route'
  | 'charge-before-a-storm'
  | 'counted-five-years-old'
  | 'inverter-not-known'
  | 'more-fuel-expected'
  | 'no-drain-between'
  | 'no-refill-counted'
  | 'no-timetable-for-medicine'
  | 'service-and-test-runs'
  | 'sized-for-life'
  | 'soft-starter-counted'
  | 'sump-on-its-battery'
  | 'things-to-have-ready'
  | 'vehicle-240-outlet'
  | 'water-rises-between';

/** What a house burns propane for: heat is that of a hard winter day. */
export type PropaneUse = 'heat' | 'hot-water' | 'cooking';

/** What is good to know of a route, with its figures; `words` says it. */
export type Note =
  | PlainNote
  | { readonly code: 'runs-in-blocks'; readonly hours: number }
  | { readonly code: 'panels-spare-fuel'; readonly kwh: number; readonly season: Season }
  | { readonly code: 'nine-years-in-ten'; readonly seasons: Season | 'any'; readonly kwh: number }
  | {
      readonly code: 'counted-at-age';
      readonly years: number;
      readonly usableKwh: number;
      readonly ofKwh: number;
    }
  | { readonly code: 'only-what-it-keeps'; readonly kwh: number }
  /** Run in some hours of the day only: fuel a day, how long that lasts, what stands still between, and what that does. */
  | ({
      readonly code: 'by-timetable';
      readonly runHours: Stretches;
      readonly burnsPerDay: number;
      readonly unit: string;
      readonly lastsHours: number | null;
      readonly still: readonly LoadName[];
    } & BetweenBlocks)
  | { readonly code: 'no-timetable-for'; readonly called: LoadName }
  | { readonly code: 'less-on-this-fuel'; readonly share: number }
  | { readonly code: 'less-at-this-height'; readonly watts: number; readonly ofWatts: number }
  | {
      readonly code: 'kept-to-drive-away';
      readonly miles: number;
      readonly kwh: number;
      readonly ofKwh: number;
    }
  | {
      readonly code: 'vehicle-charge';
      readonly share: number;
      readonly givesKwh: number;
      readonly fullGivesKwh: number;
    }
  /** What the house burns from the tank of the generator, and for what. */
  | {
      readonly code: 'shared-tank';
      readonly gallons: number;
      readonly housePerDay: Figure;
      readonly uses: readonly PropaneUse[];
    };
