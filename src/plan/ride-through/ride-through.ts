import type { MustCarried, Odds, Scope } from '../../advice/ride/odds';
import type { RouteKind } from '../../kinds/route-kind';
import type { RouteTitle } from '../../kinds/route-title';
import type { Figure } from '../../quantity/figure';
import type { GeneratorFuel } from '../../tables/fuels';
import type { FailsFirst } from './failing';

/** Charge a battery must hold when an outage of the goal's length begins, kWh; null: a full one would not do. */
export interface ChargeAtStart {
  readonly median: number | null;
  readonly oneInTen: number | null;
  readonly worst: number | null;
}

export interface BadCaseHour {
  readonly hour: number;
  /** What the things switched on asked for, and what of it was given. */
  readonly loadKw: number;
  readonly servedKw: number;
  readonly sunKw: number;
  readonly chargeKwh: number;
  /** Fuel at the end of the hour, gal; null without a generator, or where it is piped in. */
  readonly fuelLeft: number | null;
}

/** One drawn outage by the careful count: hungry use, the low end of the fuel, a hard start hour. */
export interface BadCase {
  readonly month: number;
  readonly hourOfDay: number;
  readonly hours: readonly BadCaseHour[];
  /** Hours until the first that is not fully served; null when the whole goal is ridden through. */
  readonly endsAfter: number | null;
  /** Gallons counted, where by the careful count there is none today and cans are still to be filled; else missing. */
  readonly storedGal?: number;
}

/** What is larger or smaller: storage, kWh; sun or a generator, kW; fuel, gal. */
export type NeighborStep = { readonly larger: boolean } & (
  | { readonly code: 'battery' | 'pack'; readonly kwh: number }
  | { readonly code: 'solar' | 'generator'; readonly kw: number }
  | { readonly code: 'fuel'; readonly gallons: number; readonly fuel: GeneratorFuel }
);

/** A size beside the one chosen, and what it would bring. */
export interface Neighbor {
  readonly step: NeighborStep;
  /** Null where the route has no battery. */
  readonly nameplateKwh: number | null;
  readonly solarKw: number;
  /** Share of outages of the goal's length, in the hardest season; null: it does not start or carry what must run. */
  readonly odds: number | null;
  /** The same by the careful count: hungry use, low tank, thirsty generator; from a sample of starts. */
  readonly carefulOdds: number | null;
  readonly costUsd: Figure;
  /** The same share once the cans in the parts are filled; missing where none are to be filled. */
  readonly oddsOnceStored?: number;
}

/** How else a route may be used. */
export type OtherUse =
  /** With as much fuel again every so many hours, which the household calls sure or likely. */
  | { readonly code: 'refilled'; readonly everyHours: number; readonly sure: boolean }
  | { readonly code: 'vehicle-stays-home' }
  | { readonly code: 'vehicle-charged-full' }
  | { readonly code: 'switched-off-in-order' };

/** What the odds are counted from: start hours in so many drawn years, every one or a sample. */
export type Basis =
  | { readonly code: 'battery' | 'generator'; readonly years: number }
  | ({ readonly code: 'generator-and-battery' } & Sample)
  /** `chargeShare`: how full it is when the power fails, 0 to 1. */
  | ({ readonly code: 'vehicle'; readonly chargeShare: number } & Sample);

interface Sample {
  readonly years: number;
  readonly starts: number;
  /** One start hour in so many. */
  readonly everyHours: number;
  /** Fuel at hand only, no refill counted. */
  readonly burnsFuel: boolean;
}

/** The same route used otherwise, for outages of the goal's length in the hardest season, from a sample of starts. */
export interface Variant {
  readonly use: OtherUse;
  readonly share: number;
  readonly standardError: number | null;
  /** The share by the careful count. */
  readonly carefulShare: number;
}

/** How one route rides through. */
export interface RouteRide {
  readonly kind: RouteKind;
  readonly called: RouteTitle;
  readonly basis: Basis;
  readonly odds: Readonly<Partial<Record<Scope, readonly Odds[]>>>;
  /** Share of outages of the goal's length ridden through from a battery half full; null without one. */
  readonly fromHalfFull: number | null;
  readonly chargeAtStart: ChargeAtStart | null;
  /** Share of the usable charge to keep for outages, by month, for 9 in 10 of the goal's length; null: full is not enough. */
  readonly keepByMonth: readonly (number | null)[] | null;
  /** Mean energy gone without in an outage of the goal's length in the hardest season, kWh at the house. */
  readonly unservedKwh: number;
  /** Mean hours not fully served in it, from sampled starts. */
  readonly unservedHours: number;
  /** What fails first within two weeks, and when. */
  readonly failsFirst: FailsFirst;
  readonly badCase: BadCase | null;
  readonly variants: readonly Variant[];
  readonly neighbors: readonly Neighbor[];
  readonly carries: MustCarried;
  /** Share of outages of the goal's length ridden through by the careful count, of sampled starts in the season. */
  readonly carefulShare: number;
  /** The same two shares once the cans in the parts are filled; null where none are to be filled. */
  readonly onceStored: GoalOnceStored | null;
}

/** Shares of outages of the goal's length, of sampled starts in the season, with the cans filled. */
export interface GoalOnceStored {
  readonly gallons: number;
  readonly share: number;
  readonly carefulShare: number;
}

type Beside = 'neighbors' | 'variants' | 'carries' | 'carefulShare' | 'onceStored';

/** A route's ride before the sizes beside it are looked at. */
export type Ride = Omit<RouteRide, Beside>;

/** Odds of a battery route that works but is neither advised nor beside it, with what must keep running. */
export interface OtherRide {
  readonly kind: RouteKind;
  readonly called: RouteTitle;
  readonly odds: readonly Odds[];
  readonly carries: MustCarried;
}
