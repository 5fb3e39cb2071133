import { loadName } from '../../../home/load-names';
import { isSource } from '../../../kinds/ask-traits';
import { traitsOf } from '../../../kinds/route-traits';
import type { Plan } from '../../../plan/plan';
import { mustCarried } from '../../../routes/must-carried';
import { onceStored } from '../../../routes/once-stored';
import type { Route } from '../../../routes/route';
import { isOpen, onlyUnknown } from '../../../routes/stop';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';
import { table } from '../../markdown/table';

/** The routes side by side: those shown in the table, those also possible, those not possible and why. */
export function sayRoutes(plan: Plan, words: Words): string[] {
  const say = words.household.routes;
  const { advice } = plan;
  const preparation = plan.routes.find((route) => !isSource(traitsOf[route.kind]))!;
  const shown = [...new Set([advice.route, ...advice.beside, preparation])];
  const row = (route: Route) => [
    route.title,
    carried(plan, route, words),
    howLong(plan, route, words),
    words.figure(route.costUsd),
    priceYears(route, words),
  ];
  const cannot = plan.routes.filter((route) => route.verdict === 'cannot');
  const others = plan.routes.filter(
    (route) => route.verdict !== 'cannot' && !shown.includes(route),
  );
  const because = (title: string, routes: readonly Route[]) =>
    routes.length > 0
      ? [title, bullets(routes.map((route) => say.because(route.title, whyNot(route, words))))]
      : [];
  return [
    `## ${say.title}`,
    table(say.columns, shown.map(row)),
    say.costsAreRanges,
    ...(others.length > 0
      ? [say.alsoPossible, bullets(others.map((route) => otherLine(plan, route, words)))]
      : []),
    ...because(
      say.notPossible,
      cannot.filter((route) => !onlyUnknown(route.stops)),
    ),
    ...because(
      say.notKnownYet,
      cannot.filter((route) => onlyUnknown(route.stops)),
    ),
  ];
}

/** Under "not possible" stands only what was told; what is missing beside it settles nothing. */
function whyNot({ stops }: Route, words: Words): string[] {
  const told = stops.filter((stop) => !isOpen(stop));
  return (told.length > 0 ? told : stops).map(words.stop);
}

function otherLine(plan: Plan, route: Route, words: Words): string {
  const missed = route.leavesOut.filter((load) => load.must && load.why.code !== 'one-job-only');
  return words.household.routes.inOneLine(route, {
    carried: carried(plan, route, words),
    howLong: howLong(plan, route, words),
    without: missed.map(({ load, why }) => ({
      name: loadName(plan.home, load),
      why: words.leftOut(why),
    })),
  });
}

function carried(plan: Plan, route: Route, words: Words): string {
  const say = words.household.routes;
  return route.carries.length === 0 ? say.carriesNone : say.carried(mustCarried(plan.home, route));
}

/** Where cans are still to be filled: today, and then. */
function howLong({ home }: Plan, route: Route, words: Words): string {
  const say = words.household.routes;
  const hoursOf = ({ carries, lasting }: Route) =>
    carries.length === 0 ? say.noPower : say.hours(lasting.hours);
  const stored = onceStored(home, route);
  return stored === null
    ? hoursOf(route)
    : say.onceCansAreFilled(hoursOf(route), hoursOf(stored.route));
}

function priceYears(route: Route, words: Words): string {
  const say = words.household.routes;
  const years = route.parts.map((p) => p.year).filter((year) => year > 0);
  return years.length === 0 ? say.noPrices : say.years(Math.min(...years), Math.max(...years));
}
