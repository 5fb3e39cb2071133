import type { MustCarried, Odds, Scope } from '../../advice/ride/odds';
import type { RouteKind } from '../../kinds/route-kind';
import type { Figure } from '../../quantity/figure';

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
}

/** A size beside the one chosen, and what it would bring. */
export interface Neighbor {
  readonly says: string;
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

/** The same route used otherwise, for outages of the goal's length in the hardest season, from a sample of starts. */
export interface Variant {
  /** "with more fuel every 2 days". */
  readonly says: string;
  readonly share: number;
  readonly standardError: number | null;
  /** The share by the careful count. */
  readonly carefulShare: number;
}

/** How one route rides through. */
export interface RouteRide {
  readonly kind: RouteKind;
  readonly title: string;
  readonly basis: string;
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
  readonly failsFirst: string;
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
  readonly title: string;
  readonly odds: readonly Odds[];
  readonly carries: MustCarried;
}
