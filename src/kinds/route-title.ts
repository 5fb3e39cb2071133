import { type RouteKind, routeKinds } from './route-kind';

/** What a route is called, as a code: a standby generator that is there already has a name of its own. */
export const routeTitles = [...routeKinds, 'own-standby'] as const;

export type RouteTitle = (typeof routeTitles)[number];

export const kindOf = (called: RouteTitle): RouteKind =>
  called === 'own-standby' ? 'standby-engine' : called;
