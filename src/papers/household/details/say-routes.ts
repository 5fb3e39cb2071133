import type { RouteCounts } from '../../../advice/route-counts';
import { isSource } from '../../../kinds/ask-traits';
import { traitsOf } from '../../../kinds/route-traits';
import type { Plan } from '../../../plan/plan';
import type { Route } from '../../../routes/route';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';
import { table } from '../../markdown/table';

/** The routes side by side: those shown in the table, those also possible, those not possible and why. */
export function sayRoutes(plan: Plan, words: Words): string[] {
  const say = words.household.routes;
  const { advice } = plan;
  const preparation = plan.routes.find((route) => !isSource(traitsOf[route.kind]))!;
  const shown = [...new Set([advice.route, ...advice.beside, preparation])];
  const of = (route: Route) => plan.counts[route.kind];
  const row = (route: Route) => [
    words.routeTitle(route.called),
    carried(of(route), words),
    howLong(route, of(route), words),
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
    ...because(plan, { title: say.notPossible, routes: cannot, onlyUnknown: false }, words),
    ...because(plan, { title: say.notKnownYet, routes: cannot, onlyUnknown: true }, words),
  ];
}

/** Routes closed by the same stand in one line. */
function because(
  { counts }: Plan,
  given: { title: string; routes: readonly Route[]; onlyUnknown: boolean },
  words: Words,
): string[] {
  const byReason = new Map<string, string[]>();
  for (const route of given.routes) {
    const { onlyUnknown, decisive } = counts[route.kind];
    if (onlyUnknown !== given.onlyUnknown) continue;
    const why = words.household.routes.why(decisive.map(words.stop));
    byReason.set(why, [...(byReason.get(why) ?? []), words.routeTitle(route.called)]);
  }
  const lines = [...byReason].map(([why, names]) => words.household.routes.because(names, why));
  return lines.length > 0 ? [given.title, bullets(lines)] : [];
}

function otherLine(plan: Plan, route: Route, words: Words): string {
  const counts = plan.counts[route.kind];
  const missed = route.leavesOut.filter((load) => load.must && load.why.code !== 'one-job-only');
  return words.household.routes.inOneLine(route, {
    carried: carried(counts, words),
    howLong: howLong(route, counts, words),
    without: missed.map(({ load, why }) => ({
      name: words.loadName(plan.home, load),
      why: words.leftOut(why),
    })),
  });
}

export function carried({ must }: RouteCounts, words: Words): string {
  const say = words.household.routes;
  return must.carried === 0 ? say.carriesNone : say.carried(must);
}

/** Where cans are still to be filled: today, and then. */
export function howLong(route: Route, { onceStored }: RouteCounts, words: Words): string {
  const say = words.household.routes;
  const hoursOf = ({ carries, lasting: { hours, how } }: Route) => {
    if (carries.length === 0) return say.noPower;
    return how.code === 'vehicle-away'
      ? say.whileAtHome(say.hours(how.storeHours))
      : say.hours(hours);
  };
  return onceStored === null
    ? hoursOf(route)
    : say.onceCansAreFilled(hoursOf(route), hoursOf(onceStored.route));
}

function priceYears(route: Route, words: Words): string {
  const say = words.household.routes;
  const years = route.parts.map((p) => p.year).filter((year) => year > 0);
  return years.length === 0 ? say.noPrices : say.years(Math.min(...years), Math.max(...years));
}
