import type { Advice } from '../../advice/advice';
import type { PossibleIf } from '../../advice/possible-if';
import type { Home } from '../../home/home';
import { hasFixedBattery } from '../../kinds/ask-traits';
import type { RouteKind } from '../../kinds/route-kind';
import { type RouteTraits, traitsOf } from '../../kinds/route-traits';
import type { Contradiction } from './contradiction';

/** Equipment that a contradiction is about and nothing else. */
interface Equipment {
  readonly in: (traits: RouteTraits) => boolean;
  readonly ownedAs: 'home-battery' | 'solar';
}

/** Those not named here are about the home or the job, whatever is bought. */
const about: Partial<Readonly<Record<Contradiction['id'], Equipment>>> = {
  'battery-below-flood': { in: hasFixedBattery, ownedAs: 'home-battery' },
  'roof-over-home': { in: ({ roofSolar }) => roofSolar, ownedAs: 'solar' },
};

export interface Settling {
  /** To be settled before anything is bought. */
  readonly toSettle: readonly Contradiction[];
  /** About equipment that is not here and that this plan neither buys nor lays beside: only if it is ever wanted. */
  readonly settleIfEver: readonly Contradiction[];
}

/**
 * Parts what has to be settled for this plan from what only another purchase would rest on.
 * @param possibleIf looked at only where something said does not fit and is about equipment
 */
export function touching(
  home: Home,
  all: readonly Contradiction[],
  advice: Advice,
  possibleIf: () => readonly PossibleIf[],
): Settling {
  const touches = ({ id }: Contradiction): boolean => {
    const equipment = about[id];
    if (equipment === undefined) return true;
    return (
      home.facts.has('own-sources', equipment.ownedAs) ||
      kindsOf(advice, possibleIf(), id).some((kind) => equipment.in(traitsOf[kind]))
    );
  };
  return {
    toSettle: all.filter(touches),
    settleIfEver: all.filter((one) => !touches(one)),
  };
}

/** All that the plan buys, lays beside or counts on a condition; not what is possible only if this very thing is settled. */
function kindsOf(
  advice: Advice,
  possibleIf: readonly PossibleIf[],
  id: Contradiction['id'],
): RouteKind[] {
  const { waysOn } = advice;
  const ways =
    waysOn === null
      ? []
      : [
          waysOn.moreMoney,
          waysOn.littleMore,
          waysOn.shorterGoal,
          waysOn.lessCarried,
          waysOn.oneRoom,
        ];
  const lines = [...advice.list, ...ways.flatMap((way) => way?.line ?? [])];
  const ifs = possibleIf.filter(({ conditions }) => conditions.every(({ code }) => code !== id));
  return [
    advice.route,
    ...advice.beside,
    ...(advice.wholeJob === null ? [] : [advice.wholeJob]),
    ...lines.flatMap(({ route }) => route ?? []),
    ...ifs.flatMap(({ routes }) => routes),
  ].map(({ kind }) => kind);
}
