import type { PartName } from '../bill/lifecycle/part-name';
import type { Way } from '../home/home';
import type { LoadId } from '../home/loads/load-id';
import type { RouteKind } from '../kinds/route-kind';
import type { RouteTitle } from '../kinds/route-title';
import type { Figure } from '../quantity/figure';
import type { GeneratorFuel } from '../tables/fuels';
import type { EquipmentClass } from '../tables/prices/equipment-costs';
import type { HowLong } from './how-long';
import type { Note, PropaneUse } from './note';
import type { If } from './stops/condition';
import type { Stop } from './stops/stop';
import type { TransferTime } from './transfer-time';
import type { WhyLeftOut } from './why-left-out';

/** Something to buy or have done, with its price as a range of a year's dollars. */
export interface Part {
  readonly called: PartName;
  readonly costUsd: Figure;
  readonly year: number;
  /** Class in the table of costs, and how many units of it; its life and upkeep stand there. */
  readonly equipmentClass: EquipmentClass;
  readonly units: number;
}

/** A load a route does not carry, and why not. */
export interface LeftOut {
  readonly load: LoadId;
  readonly why: WhyLeftOut;
  /** It must keep running, so the household has to know. */
  readonly must: boolean;
}

/** Power a source must give. */
export interface PowerSize {
  readonly continuousWatts: number;
  readonly startVa: number;
  /** What the loads it carries ask of it. */
  readonly runningWatts: Figure;
  readonly startDemandVa: Figure;
}

export interface FuelUse {
  readonly fuel: GeneratorFuel;
  readonly unit: string;
  readonly perDay: Figure;
  /** Fuel at hand that can be burned; null when it is piped in. */
  readonly atHand: Figure | null;
  /** Where the house burns from the same tank: what is in it, and what the house takes of it a day. */
  readonly tank?: Figure;
  readonly besidePerDay?: Figure;
  /** What the house burns it for. */
  readonly besideFor?: readonly PropaneUse[];
  /** Where the parts hold no cans: no more than is kept today is ever counted, gal. */
  readonly noMoreThanGal?: number;
}

/** The generator of a route and how it is run. */
export interface GeneratorSize {
  /** Rating on its label, kW: its own friction, and so its idle burn, goes by this one. */
  readonly ratedKw: number;
  /** Continuous output at this height and heat, kW. */
  readonly siteKw: number;
  /** Hours of the day in which it runs, 1 or 0 by hour. */
  readonly runsByHour: readonly number[];
  readonly type: 'portable' | 'portable-inverter' | 'standby';
}

/** How long it lasts from full, in the season of the goal. */
export interface Lasting {
  /** Hours; null when no end is foreseen while the supply holds. */
  readonly hours: Figure | null;
  readonly how: HowLong;
  readonly reachesGoal: boolean;
}

/** Storage of a fixed battery by the two measures, which are never mixed. */
export interface SizeByOdds {
  /** Usable kWh for 9 such outages in 10, whenever in the season they start. */
  readonly nineOutagesInTenKwh: number;
  /** Usable kWh for 9 winters (or summers) in 10, whenever in them the outage starts. */
  readonly nineYearsInTenKwh: number;
}

/** One way to get backup power, sized and priced for this home. */
export interface Route {
  readonly kind: RouteKind;
  readonly called: RouteTitle;
  /** The way of living it is sized and counted for. */
  readonly way: Way;
  readonly verdict: 'works' | 'works-if' | 'cannot';
  /** Why it cannot work here, or cannot be said to yet. */
  readonly stops: readonly Stop[];
  /** What must be true, or be settled, before it works. */
  readonly ifs: readonly If[];
  readonly carries: readonly LoadId[];
  readonly leavesOut: readonly LeftOut[];
  readonly power: PowerSize | null;
  /** Battery as bought and as it can be used, kWh. */
  readonly nameplateKwh: number | null;
  readonly usableKwh: number | null;
  readonly solarKw: number | null;
  readonly sizeByOdds: SizeByOdds | null;
  readonly fuel: FuelUse | null;
  readonly generator: GeneratorSize | null;
  readonly transferTime: TransferTime;
  readonly lasting: Lasting;
  readonly parts: readonly Part[];
  readonly costUsd: Figure;
  readonly notes: readonly Note[];
}
