import type { RouteTraits } from './route-traits';

/** It gives power; preparation alone gives none. */
export const isSource = (traits: RouteTraits) => traits.connection !== 'nothing';

/** It is wired to the house, and so needs a permit and a licensed electrician. */
export const isWired = (traits: RouteTraits) => isSource(traits) && traits.connection !== 'outlets';

/** It reaches only what plugs in. */
export const outletsOnly = (traits: RouteTraits) => traits.connection === 'outlets';

/** It has a battery fixed to the house, which runs beside the grid. */
export const hasFixedBattery = (traits: RouteTraits) => traits.battery === 'fixed';

/** It has a battery to carry and plug in. */
export const isPack = (traits: RouteTraits) => traits.battery === 'plug-in';

/** It burns fuel in a generator. */
export const hasGenerator = (traits: RouteTraits) => traits.generator !== 'none';

/** It has a generator that is rolled out by hand. */
export const hasPortableGenerator = (traits: RouteTraits) => traits.generator === 'portable';

/** It has a generator fixed outdoors. */
export const hasFixedGenerator = (traits: RouteTraits) => traits.generator === 'fixed';

/** It brings a large rechargeable battery, in a box, on a wall or in a vehicle. */
export const hasBattery = (traits: RouteTraits) => traits.battery !== 'none' || traits.vehicle;

/** Only chosen circuits of the panel are fed. */
export const feedsCircuits = (traits: RouteTraits) =>
  traits.connection === 'inlet' || traits.connection === 'circuits';
