import type { Plan } from '../../plan/plan';
import { round } from './figure-data';
import type { PlanData } from './plan-schema';

/** What comes first where the money of now does not buy all that is advised. */
export function firstBuyData({ advice: { firstBuy } }: Plan): PlanData['advised']['firstBuy'] {
  if (firstBuy === null) return 'all of it at once';
  const { nowUsd, shortUsd, part, restUsd, thriftUsd } = firstBuy;
  return {
    nowUsd,
    shortUsd: round(shortUsd),
    part:
      part === null ? 'nothing of it works by itself' : { route: part.kind, usd: round(part.usd) },
    restUsd: round(restUsd),
    thriftUsd:
      thriftUsd === null ? 'changes nothing, or costs more than there is now' : round(thriftUsd),
  };
}
