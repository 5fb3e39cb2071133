import type { RouteKind } from '../../home/route-kind';

/** Every route that brings a source of power; preparation alone brings none. */
export const sourceKinds: readonly RouteKind[] = [
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
];

/** Routes that take over by themselves, with every connected motor at once. */
export const automaticKinds: readonly RouteKind[] = [
  'standby-engine',
  'battery-whole',
  'battery-engine',
];
