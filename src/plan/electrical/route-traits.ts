import { engineKinds, fixedBatteryKinds, wiredKinds } from '../../home/route-kind';
import type { Route } from '../../routes/route';

/** It has a battery fixed to the house. */
export const isFixedBattery = (route: Route) => fixedBatteryKinds.includes(route.kind);

/** It makes its power in an engine, or may. */
export const hasEngine = (route: Route) => engineKinds.includes(route.kind);

/** It is wired to the house. */
export const isWired = (route: Route) => wiredKinds.includes(route.kind);

/** Its power is limited by an inverter, which trips where an engine sags. */
export const byInverter = (route: Route) =>
  isFixedBattery(route) || ['power-pack', 'single-battery', 'vehicle'].includes(route.kind);

/** A route that could work here and gives power. */
export const givesPower = (route: Route) => route.verdict !== 'cannot' && route.power !== null;
