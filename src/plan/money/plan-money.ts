import type { ChoiceId } from '#compiled/question-ids.js';
import type { WorkedLife } from '../../bill/lifecycle/battery-wear';
import type { CostPart, OldPrice } from '../../bill/lifecycle/cost-part';
import type { LossAYear } from '../../bill/lifecycle/outage-worth';
import type { RouteMoney } from '../../bill/lifecycle/route-money';
import type { CarriesOver, Stage } from '../../bill/lifecycle/staged-buying';
import type { BillMatch } from '../../bill/tariff/match-bill';
import type { RouteKind } from '../../kinds/route-kind';
import type { RouteTitle } from '../../kinds/route-title';
import { practice } from '../../tables/practice-figures';
import type { EndedIncentive } from '../../tables/prices/incentives';
import type { Noise } from '../../tables/prices/noise';
import type { BetweenOutages } from './between-outages';
import type { HouseUse } from './house-year';
import type { JulyBills } from './july-bills';
import type { PeaksKnown } from './peak-factors-of';
import type { ReserveRow } from './reserve-table';
import type { Ridden } from './ridden';
import type { HomeTariff } from './tariff-of';

/** Years a route is counted over, and the rate a year above inflation: the usual ones for a home, not asked. */
export const STUDY_YEARS = practice('study-years');
/** Floor of the federal energy-project rate for more than a decade (10 CFR 436). */
export const REAL_RATE = practice('real-rate');

/** One route over its life. */
export interface MoneyOfRoute {
  readonly kind: RouteKind;
  readonly called: RouteTitle;
  readonly parts: readonly CostPart[];
  readonly money: RouteMoney;
  /** Null for a route that does nothing on the bill. */
  readonly between: BetweenOutages | null;
  readonly ridden: Ridden;
  readonly incentives: number;
  /** Life of the battery at the pace it works between outages; null where it does nothing on the bill. */
  readonly batteryLife: WorkedLife | null;
  /** Shortest life of what wears, years; null when nothing does. */
  readonly lifeYears: number | null;
  readonly upkeepPerYear: number;
  readonly leadWeeks: { readonly low: number; readonly high: number };
  readonly noise: Noise;
}

/** The money side of a plan. */
export interface PlanMoney {
  /** Null off the grid. */
  readonly tariff: HomeTariff | null;
  readonly use: HouseUse;
  /** How the peaks of a demand charge are known; null without one. */
  readonly peaks: PeaksKnown | null;
  readonly billFit: BillMatch | null;
  readonly routes: readonly MoneyOfRoute[];
  /** What a year of outages costs a household that does nothing, apart from the bill; empty when not told. */
  readonly losses: readonly LossAYear[];
  readonly outageHours: { readonly ordinary: number; readonly major: number };
  /** The battery route whose reserve is looked at, and its levels. */
  readonly reserveOf: RouteKind | null;
  readonly reserve: readonly ReserveRow[];
  /** Null where nothing changes the bill. */
  readonly julyBills: JulyBills | null;
  /** What the rule holds against each kWh a battery gives, before it lets it work, $. */
  readonly wearPerKwhUsd: number;
  readonly stages: readonly Stage[];
  readonly carriesOver: CarriesOver;
  readonly oldPrices: readonly OldPriceIn[];
  readonly incentiveNotes: readonly IncentiveNote[];
}

/** A price more than two years old, and the routes it is part of. */
export interface OldPriceIn {
  readonly price: OldPrice;
  readonly routes: readonly RouteTitle[];
}

/** Money back that is counted, and credits that no longer apply. */
export type IncentiveNote =
  | { readonly code: 'none-promised' }
  | {
      readonly code: 'told';
      readonly dollars: number;
      readonly by: ChoiceId<'incentive-who'> | null;
    }
  | EndedIncentive;
