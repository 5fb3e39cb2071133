import type { PossibleIf } from '../../advice/possible-if';
import type { Words } from '../../words/words';
import { cautionData } from './caution-data';
import type { PlanData } from './plan-schema';
import { routeData } from './route-data';

export function possibleIfData(
  { conditions, gain, home, routes, counts, cautions }: PossibleIf,
  words: Words,
): PlanData['possibleIf'][number] {
  return {
    conditions: conditions.map(({ code, settles }) => ({
      code,
      if: words.household.possibleIf.condition(code),
      settles,
    })),
    gain,
    routes: routes.map((route) =>
      routeData(home, { route, notKnownYet: counts[route.kind].onlyUnknown }, words),
    ),
    cautions: cautions.map((one) => cautionData(home, one, words)),
  };
}
