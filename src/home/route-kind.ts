/** The ways to get backup power that Lampkeeper knows, plainest first. */
export const routeKinds = [
  'preparation',
  'single-battery',
  'power-pack',
  'engine-cords',
  'engine-inlet',
  'standby-engine',
  'battery-circuits',
  'battery-whole',
  'battery-solar',
  'battery-engine',
  'vehicle',
] as const;

export type RouteKind = (typeof routeKinds)[number];

/** Kinds in which an engine makes the power. */
export const engineKinds: readonly RouteKind[] = [
  'engine-cords',
  'engine-inlet',
  'standby-engine',
  'battery-engine',
];

/** Kinds with a battery fixed to the house. */
export const fixedBatteryKinds: readonly RouteKind[] = [
  'battery-circuits',
  'battery-whole',
  'battery-solar',
  'battery-engine',
];

/** Kinds that are wired to the house and so need a permit and a licensed electrician. A vehicle is planned on cords alone. */
export const wiredKinds: readonly RouteKind[] = [
  'engine-inlet',
  'standby-engine',
  ...fixedBatteryKinds,
];

/** Kinds that take over by themselves, with every connected motor at once. */
export const automaticKinds: readonly RouteKind[] = ['standby-engine', ...fixedBatteryKinds];
