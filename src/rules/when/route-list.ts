import { type RouteKind, routeKinds } from '../../home/route-kind';

/** Every route that brings a source of power; preparation alone brings none. */
export const sourceKinds: readonly RouteKind[] = routeKinds.filter(
  (kind) => kind !== 'preparation',
);
