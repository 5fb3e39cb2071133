import type { RouteKind } from '../../kinds/route-kind';
import type { RouteTitle } from '../../kinds/route-title';
import type { Figure } from '../../quantity/figure';
import type { EquipmentClass } from '../../tables/prices/equipment-costs';

/** Something the household told it has that helps in an outage. */
export type ThingId =
  | 'generator'
  | 'standby'
  | 'pack'
  | 'battery'
  | 'ups'
  | 'solar'
  | 'vehicle-battery'
  | 'vehicle-engine'
  | 'switch'
  | 'stove'
  | 'water'
  | 'cords'
  | 'thin-cords';

/** What makes it work in an outage. */
export type NeedId =
  | 'outdoors'
  | 'fuel'
  | 'connection'
  | 'serviced'
  | 'looked-at'
  | 'charged'
  | 'backed-panel'
  | 'island'
  | 'at-home'
  | 'maker-allows'
  | 'swept'
  | 'alarm'
  | 'fresh'
  | 'uncoiled'
  | 'not-for-motors';

/** A route that is built on it, with what has to be bought for that. */
export interface Built {
  readonly kind: RouteKind;
  readonly called: RouteTitle;
  /** Likely, $. */
  readonly usd: number;
}

export interface ThingThere {
  readonly id: ThingId;
  /** How much of it there is, as told; null where nobody told. */
  readonly size: Figure | null;
  /** Years, where it was asked; null where it was not. */
  readonly ageYears: number | null;
  readonly needs: readonly NeedId[];
  /** False: nothing in this plan leans on it. */
  readonly counts: boolean;
  /** Routes that add to it in place of buying it again; empty where it works by itself. */
  readonly builtOn: readonly Built[];
}

/** Class of the part that stands for it in a route. */
export const classesOf: Readonly<Record<ThingId, readonly EquipmentClass[]>> = {
  generator: ['portable-engine'],
  standby: ['standby-engine'],
  pack: ['power-pack'],
  battery: ['battery'],
  ups: [],
  solar: ['solar'],
  'vehicle-battery': [],
  'vehicle-engine': [],
  switch: ['inlet-interlock', 'automatic-transfer'],
  stove: [],
  water: [],
  cords: ['cords'],
  'thin-cords': [],
};
