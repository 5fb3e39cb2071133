import type { Home } from '../../../home/home';
import { loadName } from '../../../home/loads/load-names';
import { isSource } from '../../../kinds/ask-traits';
import { traitsOf } from '../../../kinds/route-traits';
import type { Plan } from '../../../plan/plan';
import { onceStored } from '../../../routes/fuel/once-stored';
import { mustCarried } from '../../../routes/must-carried';
import type { Route } from '../../../routes/route';
import { isForGood, isOpen, onlyUnknown, type Stop } from '../../../routes/stops/stop';
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
    words.routeTitle(route.called),
    carried(plan.home, route, words),
    howLong(plan.home, route, words),
    words.figure(route.costUsd),
    priceYears(route, words),
  ];
  const ifs = new Set(plan.possibleIf.flatMap(({ routes }) => routes.map(({ kind }) => kind)));
  const cannot = plan.routes.filter(({ kind, verdict }) => verdict === 'cannot' && !ifs.has(kind));
  const others = plan.routes.filter(
    (route) => route.verdict !== 'cannot' && !shown.includes(route),
  );
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
      words,
    ),
    ...because(
      say.notKnownYet,
      cannot.filter((route) => onlyUnknown(route.stops)),
      words,
    ),
  ];
}

/** Routes closed by the same stand in one line. */
function because(title: string, routes: readonly Route[], words: Words): string[] {
  const byReason = new Map<string, string[]>();
  for (const { stops, called } of routes) {
    const why = words.household.routes.why(decisive(stops).map(words.stop));
    byReason.set(why, [...(byReason.get(why) ?? []), words.routeTitle(called)]);
  }
  const lines = [...byReason].map(([why, names]) => words.household.routes.because(names, why));
  return lines.length > 0 ? [title, bullets(lines)] : [];
}

/**
 * Under "not possible" stands only what was told, and of that the one thing that can never be otherwise; what is missing
 * beside it settles nothing.
 */
function decisive(stops: readonly Stop[]): readonly Stop[] {
  const told = stops.filter((stop) => !isOpen(stop));
  const forGood = stops.filter(isForGood).slice(0, 1);
  return [forGood, told, stops].find((some) => some.length > 0) ?? [];
}

function otherLine(plan: Plan, route: Route, words: Words): string {
  const missed = route.leavesOut.filter((load) => load.must && load.why.code !== 'one-job-only');
  return words.household.routes.inOneLine(route, {
    carried: carried(plan.home, route, words),
    howLong: howLong(plan.home, route, words),
    without: missed.map(({ load, why }) => ({
      name: loadName(plan.home, load),
      why: words.leftOut(why),
    })),
  });
}

export function carried(home: Home, route: Route, words: Words): string {
  const say = words.household.routes;
  const count = mustCarried(home, route);
  return count.carried === 0 ? say.carriesNone : say.carried(count);
}

/** Where cans are still to be filled: today, and then. */
export function howLong(home: Home, route: Route, words: Words): string {
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
