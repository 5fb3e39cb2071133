import * as ask from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { Route } from '../../routes/route';

/** It has a battery fixed to the house. */
export const isFixedBattery = (route: Route) => ask.hasFixedBattery(traitsOf[route.kind]);

/** It makes its power in a generator, or may. */
export const hasGenerator = (route: Route) => ask.hasGenerator(traitsOf[route.kind]);

/** It is wired to the house. */
export const isWired = (route: Route) => ask.isWired(traitsOf[route.kind]);

/** Its power is limited by an inverter, its own or that of an inverter generator, which trips where a generator sags. */
export const byInverter = (route: Route) =>
  traitsOf[route.kind].inverter || route.generator?.type === 'portable-inverter';

/** A route that could work here and gives power. */
export const givesPower = (route: Route) => route.verdict !== 'cannot' && route.power !== null;
