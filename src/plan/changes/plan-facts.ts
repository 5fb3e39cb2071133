import type { Season } from '../../home/home';
import type { LoadName } from '../../home/loads/load-name';
import type { RouteKind } from '../../kinds/route-kind';
import type { RouteTitle } from '../../kinds/route-title';
import type { Severity } from '../../rules/rule';

/** Low end, likely value and high end, in the unit its name says. */
export interface Span {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** How long the route lasts on a hard day of the goal. */
export type Lasts =
  | { readonly code: 'no-power' }
  | { readonly code: 'no-end-foreseen' }
  /** Of a size beside the one the plan chose. */
  | { readonly code: 'not-counted' }
  | {
      readonly code: 'hours';
      /** On the fuel counted today, h. */
      readonly today: Span;
      /** With the cans among its parts filled; null where none are to be filled. */
      readonly stored: { readonly gallons: number; readonly hours: Span } | null;
      /** Counted over drawn years of weather, few or many. */
      readonly overDrawnYears: boolean;
    };

/** Shares of outages of the goal's length, 0 to 1; null where they were not counted. */
export interface OddsFact {
  readonly today: number;
  readonly stored: number | null;
}

/** A load, with what it is called: a code, or as a plan file says it. */
export interface LoadFact {
  readonly id: string;
  readonly name: LoadName | string;
}

export interface CautionFact {
  readonly id: string;
  readonly severity: Severity;
  /** It stands for want of an answer, not because of one. */
  readonly careful: boolean;
}

/** With more fuel after so many days: a share beside the plan, which never leans on it. */
export interface RefillFact {
  readonly everyDays: number;
  readonly share: number;
}

/** How long the health devices alone are covered, all else off, h; counted up to two weeks. */
export interface DevicesFact {
  readonly likelyHours: number;
  readonly carefulHours: number;
}

/** What two plans are laid side by side by: codes, figures, and names the plan gives. */
export interface PlanFacts {
  /** Drawn years of weather behind hours and odds. */
  readonly drawnYears: number;
  /** Too little is told, so nothing is advised. */
  readonly undecided: boolean;
  readonly route: {
    readonly kind: RouteKind;
    /** Null in a plan file of an earlier form, which holds its title in words alone. */
    readonly called: RouteTitle | null;
    readonly title: string | null;
    readonly isSource: boolean;
    /** It counts on living thriftily; null in a plan file of an earlier form, which does not tell. */
    readonly thriftily: boolean | null;
  };
  /** Battery, generator and panels of it; null where it has none. */
  readonly size: {
    readonly usableKwh: number | null;
    readonly watts: number | null;
    readonly solarKw: number | null;
    /** One step smaller or larger than what is advised; 0: as advised. */
    readonly step: -1 | 0 | 1;
  };
  readonly usd: Span;
  readonly goalHours: number;
  readonly season: Season;
  readonly lasts: Lasts;
  readonly reachesGoal: boolean;
  readonly odds: OddsFact | null;
  /** Null where no device was named; 'none-carried' where the route carries none of them. */
  readonly devices: DevicesFact | 'none-carried' | null;
  /** Life hangs on a device, or nobody told: a source is a bridge and nothing more. */
  readonly onlyBridge: boolean;
  readonly refill: RefillFact | null;
  /** Of what must keep running. */
  readonly leavesOut: readonly LoadFact[];
  readonly cautions: readonly CautionFact[];
}
