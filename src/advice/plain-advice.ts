import type { Home } from '../home/home';
import { isSource } from '../kinds/ask-traits';
import { traitsOf } from '../kinds/route-traits';
import { onceMade } from '../quantity/once-made';
import { withinBudgetUsd } from '../routes/budget';
import { carriesAllMust } from '../routes/must-carried';
import type { Route } from '../routes/route';
import { besideOf, shareOfJob } from './beside';
import { doesWholeJob } from './whole-job';

/** What is advised of one size of each route: a quick stand-in for the whole list. */
export interface PlainAdvice {
  readonly route: Route;
  /** Up to two others to lay beside it; worked out when it is looked at, for it needs the hours of all. */
  readonly beside: readonly Route[];
  /** The cheapest that would do the whole job, when the advised one does not. */
  readonly wholeJob: Route | null;
}

/**
 * For a trial of one answer among hundreds: the cheapest within the money told that does the whole job; where none does, the one that
 * comes nearest, one that leaves nothing out first; where it buys none, getting ready. What `advise` says after weighing all
 * sizes, fuel and ways of living may be another size.
 */
export function plainAdvice(home: Home, routes: readonly Route[]): PlainAdvice {
  const able = routes.filter(
    (r) => r.verdict !== 'cannot' && isSource(traitsOf[r.kind]) && r.carries.length > 0,
  );
  const payable = able.filter((r) => withinBudgetUsd(home, r.costUsd.value)).sort(byCost);
  const whole = payable.find((route) => doesWholeJob(home, route));
  const ready = routes.find((r) => !isSource(traitsOf[r.kind]))!;
  const route = whole ?? nearestOf(home, payable) ?? ready;
  const any = [...able].sort(byCost).find((one) => doesWholeJob(home, one)) ?? null;
  const beside = onceMade(() => besideOf(home, able, route));
  return {
    route,
    get beside() {
      return beside();
    },
    wholeJob: whole === undefined ? any : null,
  };
}

function nearestOf(home: Home, payable: readonly Route[]): Route | undefined {
  return [...payable].sort(
    (a, b) =>
      Number(carriesAllForLong(home, b)) - Number(carriesAllForLong(home, a)) ||
      shareOfJob(home, b) - shareOfJob(home, a) ||
      byCost(a, b),
  )[0];
}

/** Everything for so much of the time goes before a part of it for longer. Our judgement. */
const LONG_SHARE = 0.5;

/** A furnace left out is not made up for by a refrigerator that runs longer. */
function carriesAllForLong(home: Home, route: Route): boolean {
  return carriesAllMust(home, route) && shareOfJob(home, route) >= LONG_SHARE;
}

const byCost = (a: Route, b: Route) => a.costUsd.value - b.costUsd.value;
