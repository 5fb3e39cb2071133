import type { RouteTraits } from './route-traits';

/** It gives power; preparation alone gives none. */
export const isSource = (of: RouteTraits) => of.connection !== 'nothing';

/** It is wired to the house, and so needs a permit and a licensed electrician. */
export const isWired = (of: RouteTraits) => isSource(of) && of.connection !== 'outlets';

/** It reaches only what plugs in. */
export const outletsOnly = (of: RouteTraits) => of.connection === 'outlets';

/** It has a battery fixed to the house, which runs beside the grid. */
export const hasFixedBattery = (of: RouteTraits) => of.battery === 'fixed';

/** It has a battery to carry and plug in. */
export const isPack = (of: RouteTraits) => of.battery === 'plug-in';

/** It burns fuel in a generator. */
export const hasGenerator = (of: RouteTraits) => of.generator !== 'none';

/** It has a generator that is rolled out by hand. */
export const hasPortableGenerator = (of: RouteTraits) => of.generator === 'portable';

/** It has a generator fixed outdoors. */
export const hasFixedGenerator = (of: RouteTraits) => of.generator === 'fixed';

/** It brings a large rechargeable battery, in a box, on a wall or in a vehicle. */
export const hasBattery = (of: RouteTraits) => of.battery !== 'none' || of.vehicle;

/** Only chosen circuits of the panel are fed. */
export const feedsCircuits = (of: RouteTraits) =>
  of.connection === 'inlet' || of.connection === 'circuits';
