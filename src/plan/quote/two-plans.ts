import type { RouteTitle } from '../../kinds/route-title';
import type { Plan } from '../plan';

/** What of a plan is laid beside another: codes and figures. */
export interface TwoPlans {
  readonly buy: { readonly called: RouteTitle; readonly usd: number };
  /** h, by both counts; null where no end is foreseen or nothing is carried. */
  readonly lasts: { readonly likely: number; readonly careful: number } | null;
  readonly carries: { readonly carried: number; readonly of: number };
  /** Outages of the goal's length it carries, of one; null where none is counted. */
  readonly odds: number | null;
  readonly draft: boolean;
}

/** The lines of one plan. */
export function linesToCompare({ advice, mustRun, state }: Plan): TwoPlans {
  const { route, list, advised } = advice;
  const line = advised === null ? null : list[advised]!;
  const { hours } = route.lasting;
  return {
    buy: { called: route.called, usd: line?.usd ?? route.costUsd.value },
    lasts:
      line?.hours ??
      (hours === null || route.carries.length === 0
        ? null
        : { likely: hours.value, careful: hours.low }),
    carries: line?.carried ?? {
      carried: mustRun.filter(({ id }) => route.carries.includes(id)).length,
      of: mustRun.length,
    },
    odds: line === null ? null : line.value.odds / 100,
    draft: state === 'draft',
  };
}
