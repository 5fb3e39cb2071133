import type { Measure } from '../../../home/measures/measures-of';
import type { RouteKind } from '../../../kinds/route-kind';
import type { Plan } from '../../../plan/plan';
import type { DayOfCase } from '../../../plan/ways/days-of-case';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';
import { table } from '../../markdown/table';

/** In this order: what the thrifty way is made of stands first, and both ways beside each other below it. */
const below: readonly Measure['use'][] = ['counted', 'bought', 'margin', 'later'];

/** Need less first: what takes off how much, what it asks of the household, and both ways of living beside each other. */
export function sayWays(plan: Plan, words: Words): string[] {
  const { measures, usual, thrifty } = plan.waysOfLiving;
  if (measures.length === 0) return [];
  const say = words.household.ways;
  const of = (use: Measure['use']) => {
    const some = measures.filter((one) => one.use === use);
    return some.length === 0 ? [] : [say.of(use), bullets(some.map(say.measure))];
  };
  const turns = namedTurns(plan, words);
  return [
    `## ${say.title}`,
    ...(usual.kwhPerDay.value > thrifty.kwhPerDay.value ? [say.days(plan.waysOfLiving)] : []),
    ...of('thrifty'),
    ...(turns.length === 0 ? [] : [say.byTheHour(turns)]),
    ...routesTable(plan, words),
    ...daysTable(plan, words),
    ...below.flatMap(of),
  ];
}

/** What is in turns, by name. */
export function namedTurns({ home, waysOfLiving }: Plan, words: Words) {
  return waysOfLiving.turns.map(({ load, hours }) => ({
    load,
    name: words.loadName(home, load),
    hours,
  }));
}

/** Day by day of the route advised; a stop is said once, where it falls. */
function daysTable(plan: Plan, words: Words): string[] {
  const { advice, rideThrough } = plan;
  const { days } = plan.waysOfLiving;
  if (days === null) return [];
  const drawn = rideThrough.routes.find((one) => one.kind === advice.route.kind)?.badCase;
  const say = words.household.ways;
  const cell = (all: readonly DayOfCase[], i: number) =>
    i > 0 && all[i - 1]?.stoppedAfter != null ? say.off : say.day(all[i]!);
  return [
    say.daysOf(words.routeTitle(advice.route.called), drawn?.storedGal ?? null),
    table(
      say.dayColumns,
      days.usual.map((one, i) => [
        say.after(one.afterHours),
        cell(days.usual, i),
        cell(days.thrifty, i),
      ]),
    ),
  ];
}

function routesTable({ home, routes: all, waysOfLiving }: Plan, words: Words): string[] {
  const { routes, season } = waysOfLiving;
  if (routes.length === 0) return [];
  const say = words.household.ways;
  const titleOf = (kind: RouteKind) =>
    words.routeTitle(all.find((route) => route.kind === kind)?.called ?? kind);
  return [
    say.tableOf(Math.round(home.goalHours.value), season),
    table(
      say.columns,
      routes.map((one) => [
        say.route(titleOf(one.kind), one),
        say.cell(one.usual),
        say.cell(one.thrifty),
      ]),
    ),
  ];
}
