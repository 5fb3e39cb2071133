import { isSource } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import { withoutCans } from '../../routes/fuel/fuel-containers';
import { onceStored } from '../../routes/fuel/once-stored';
import type { Route } from '../../routes/route';
import { type Sized, type SizedKind, whole } from '../../routes/sized';
import type { Living } from './living';

/** A route at one size, with the fuel its parts hold cans for, in one way of living. */
export interface Candidate {
  readonly sized: Sized;
  readonly living: Living;
  /** The likely price, with what the way of living costs, $. */
  readonly usd: number;
  /** The route with the fuel it tells to keep: what odds, hours and the goal are counted by. */
  readonly counted: Route;
}

/** All sizes of a route that can be used here, each with today's fuel and once its cans are filled. */
export function candidatesOf(living: Living, { route, sizes }: SizedKind): Candidate[] {
  if (route.verdict === 'cannot' || !isSource(traitsOf[route.kind])) return [];
  return sizes()
    .filter((sized) => sized.route.carries.length > 0)
    .flatMap((sized) => {
      const today = withoutCans(living.home, sized.route);
      return today === null ? [sized] : [whole(today), sized];
    })
    .map((sized) => ({
      sized,
      living,
      usd: sized.route.costUsd.value + living.extraUsd,
      counted: onceStored(living.home, sized.route)?.route ?? sized.route,
    }));
}

/** Getting ready gives none. */
export const givesPower = ({ counted }: Candidate): boolean => isSource(traitsOf[counted.kind]);
