import { isSource } from '../kinds/ask-traits';
import { traitsOf } from '../kinds/route-traits';
import type { Route } from '../routes/route';
import { ALIKE } from './list/choose';
import { isEnough, reachesGoal } from './list/enough';
import { rank, type UsualPart, usualPart } from './list/list-of';
import { thriftily } from './list/living';
import { thriftAlone } from './list/thrift-alone';
import type { Weighed } from './list/unbeaten';
import type { Trial } from './trial';

/** What is advised beside the question, and whether it does what was asked, by the odds of the list. */
export interface LiveAdvice {
  readonly route: Route;
  readonly reaches: boolean;
}

const found = new WeakMap<Trial, LiveAdvice>();

/**
 * The route the plan would advise, by the plan's own weighing of all sizes, fuel and ways of living, on the drawn years of a trial.
 * Nothing above the money told is looked at. Worked out once for each trial.
 */
export function liveAdvice(trial: Trial): LiveAdvice {
  const advice = found.get(trial) ?? weighed(trial);
  found.set(trial, advice);
  return advice;
}

function weighed(trial: Trial): LiveAdvice {
  const { home, drawn, kinds, size } = trial;
  const usual = usualPart(home, drawn, kinds);
  const chosen = enoughAsUsual(trial, usual) ?? rank(home, drawn, kinds, size, true, usual).chosen;
  const ready = kinds.find(({ route }) => !isSource(traitsOf[route.kind]))!.route;
  return chosen === null
    ? { route: ready, reaches: false }
    : { route: chosen.sized.whole(), reaches: reachesGoal(chosen) };
}

/**
 * What is enough as usual, where no thrifty way could be chosen before it: with these odds none is better by more than is told
 * apart, and something has to give power. Null where the thrifty ways have to be looked at, which takes five times as long.
 */
function enoughAsUsual({ home, drawn, kinds }: Trial, usual: UsualPart): Weighed | null {
  const thrifty = thriftily(home);
  if (thrifty !== null && thriftAlone(thrifty) !== null) return null;
  const { all, chosen } = rank(home, drawn, kinds, null, true, usual);
  const first = all.find(isEnough);
  return first !== undefined && first.value.odds >= 100 - ALIKE ? chosen : null;
}
