import type { RouteKind } from '../../home/route-kind';
import { type Trigger, yes } from '../rule';

/** Yes when one of these routes is under discussion. */
export function routeIn(
  kinds: ReadonlySet<RouteKind>,
  wanted: readonly RouteKind[],
  because: string,
): Trigger | null {
  return wanted.some((kind) => kinds.has(kind)) ? yes(because) : null;
}
