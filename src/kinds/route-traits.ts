import type { RouteKind } from './route-kind';

/**
 * What a way to get backup power is made of and how its power reaches things. What can hurt hangs on
 * these and never on the name of a route, so that a new route brings its cautions by itself.
 */
export interface RouteTraits {
  /** A battery to carry and plug in, or one fixed to the house. */
  readonly battery: 'none' | 'plug-in' | 'fixed';
  /** What burns fuel to make power: rolled out by hand, or fixed outdoors. */
  readonly generator: 'none' | 'portable' | 'fixed';
  /** A vehicle gives the power. */
  readonly vehicle: boolean;
  /** It brings solar panels on the roof. */
  readonly roofSolar: boolean;
  /** How its power reaches things: outlets and cords, an inlet for chosen circuits, chosen circuits, the whole house. */
  readonly connection: 'nothing' | 'outlets' | 'inlet' | 'circuits' | 'house';
  /** It takes over by itself, with every connected motor at once. */
  readonly automatic: boolean;
  /** Power comes only while a person starts and refuels it. */
  readonly byHand: boolean;
  /** Its power is limited by an inverter, which trips where a generator sags. */
  readonly inverter: boolean;
  /** It carries one thing and no more, and is sized for that. */
  readonly oneJob: boolean;
  /** It leans on a source the household has; nothing large is bought for it. */
  readonly owned: boolean;
}

const none = {
  battery: 'none',
  generator: 'none',
  vehicle: false,
  roofSolar: false,
  connection: 'nothing',
  automatic: false,
  byHand: false,
  inverter: false,
  oneJob: false,
  owned: false,
} as const satisfies RouteTraits;

const pack = { ...none, battery: 'plug-in', connection: 'outlets', inverter: true } as const;
const fixedBattery = {
  ...none,
  battery: 'fixed',
  connection: 'circuits',
  automatic: true,
  inverter: true,
} as const;
const portable = { ...none, generator: 'portable', byHand: true } as const;

/** The traits of each route: a kind without a row here does not compile. */
export const traitsOf: Readonly<Record<RouteKind, RouteTraits>> = {
  preparation: none,
  'own-battery': { ...fixedBattery, owned: true },
  'single-battery': { ...pack, oneJob: true },
  'power-pack': pack,
  'engine-cords': { ...portable, connection: 'outlets' },
  'engine-inlet': { ...portable, connection: 'inlet' },
  'standby-engine': { ...none, generator: 'fixed', connection: 'house', automatic: true },
  'battery-circuits': fixedBattery,
  'battery-whole': { ...fixedBattery, connection: 'house' },
  'battery-solar': { ...fixedBattery, roofSolar: true },
  'battery-engine': { ...fixedBattery, generator: 'portable' },
  vehicle: { ...none, vehicle: true, connection: 'outlets', inverter: true, owned: true },
  'vehicle-inlet': { ...none, vehicle: true, connection: 'inlet', inverter: true, owned: true },
};
