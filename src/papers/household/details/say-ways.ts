import { loadName } from '../../../home/load-names';
import type { Measure } from '../../../home/measures/measures-of';
import type { Plan } from '../../../plan/plan';
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
  const turns = namedTurns(plan);
  return [
    `## ${say.title}`,
    ...(usual.kwhPerDay.value > thrifty.kwhPerDay.value ? [say.days(plan.waysOfLiving)] : []),
    ...of('thrifty'),
    ...(turns.length === 0 ? [] : [say.byTheHour(turns)]),
    ...routesTable(plan, words),
    ...below.flatMap(of),
  ];
}

/** What is in turns, by name. */
export function namedTurns({ home, waysOfLiving }: Plan) {
  return waysOfLiving.turns.map(({ load, hours }) => ({ name: loadName(home, load), hours }));
}

function routesTable({ home, routes: all, waysOfLiving }: Plan, words: Words): string[] {
  const { routes, season } = waysOfLiving;
  if (routes.length === 0) return [];
  const say = words.household.ways;
  const titleOf = (kind: string) => all.find((route) => route.kind === kind)?.title ?? kind;
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
