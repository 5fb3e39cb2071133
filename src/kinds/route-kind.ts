/** The ways to get backup power that Lampkeeper knows, plainest first. */
export const routeKinds = [
  'preparation',
  'own-battery',
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
  'vehicle-inlet',
] as const;

export type RouteKind = (typeof routeKinds)[number];
