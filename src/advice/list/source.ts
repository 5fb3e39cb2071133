import type { Home } from '../../home/home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { type RouteKind, routeKinds } from '../../kinds/route-kind';
import { onceMade } from '../../quantity/once-made';
import { leastUsd } from '../../routes/least-usd';
import type { SizedKind } from '../../routes/sized';
import { type Candidate, candidatesOf } from './candidate';
import type { Living } from './living';

/** Sizes one kind for a home as it lives in one of its ways; null where the home has nothing of the kind. */
export type SizeKind = (kind: RouteKind, home: Home, drawn: SyntheticYears) => SizedKind | null;

/** The candidates of one kind and way of living, worked out when asked for; none costs less than `leastUsd`. */
export interface Source {
  readonly leastUsd: number;
  readonly candidates: () => readonly Candidate[];
}

/** The kinds as they are sized already for the usual way; the candidates of each are made once. */
export function usualSources(living: Living, kinds: readonly SizedKind[]): Source[] {
  return kinds.map((sized) => ({
    leastUsd: leastUsd(living.home, sized.route.kind),
    candidates: onceMade(() => candidatesOf(living, sized)),
  }));
}

/** Every kind for another way of living. */
export function livedSources(living: Living, drawn: SyntheticYears, sizeKind: SizeKind): Source[] {
  return routeKinds.map((kind) => ({
    leastUsd: leastUsd(living.home, kind) + living.extraUsd,
    candidates: () => {
      const sized = sizeKind(kind, living.home, drawn);
      return sized === null ? [] : candidatesOf(living, sized);
    },
  }));
}
