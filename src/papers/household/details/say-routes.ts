import type { LoadId } from '../../../home/load-id';
import { loadName } from '../../../home/load-names';
import { isSource } from '../../../kinds/ask-traits';
import { traitsOf } from '../../../kinds/route-traits';
import type { Plan } from '../../../plan/plan';
import { formatQuantity } from '../../../quantity/format-quantity';
import { mustCarried } from '../../../routes/must-carried';
import { onceStored } from '../../../routes/once-stored';
import type { Route } from '../../../routes/route';
import { isOpen, onlyUnknown } from '../../../routes/stop';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';

/** The routes side by side: those shown in the table, those also possible, those not possible and why. */
export function sayRoutes(plan: Plan, words: Words): string[] {
  const { advice } = plan;
  const preparation = plan.routes.find((route) => !isSource(traitsOf[route.kind]))!;
  const shown = [...new Set([advice.route, ...advice.beside, preparation])];
  const row = (route: Route) =>
    `| ${route.title} | ${carried(plan, route)} | ${howLong(plan, route)} | ${words.figure(route.costUsd)} | ${priceYears(route)} |`;
  const cannot = plan.routes.filter((route) => route.verdict === 'cannot');
  const others = plan.routes.filter(
    (route) => route.verdict !== 'cannot' && !shown.includes(route),
  );
  return [
    '## The routes side by side',
    [
      '| Route | Of what must run | How long (careful count) | Cost installed | Prices of |',
      '|---|---|---|---|---|',
      ...shown.map(row),
    ].join('\n'),
    'Costs are ranges to ask quotes against, never quotes.',
    ...(others.length > 0
      ? ['Also possible here:', bullets(others.map((r) => otherLine(plan, r, words)))]
      : []),
    ...because(
      'Not possible here:',
      cannot.filter((route) => !onlyUnknown(route.stops)),
      words,
    ),
    ...because(
      'Not known yet, for want of an answer:',
      cannot.filter((route) => onlyUnknown(route.stops)),
      words,
    ),
  ];
}

/** Under "not possible" stands only what was told; what is missing beside it settles nothing. */
function because(title: string, routes: readonly Route[], words: Words): string[] {
  const why = ({ stops }: Route) => {
    const told = stops.filter((stop) => !isOpen(stop));
    return (told.length > 0 ? told : stops).map(words.stop).join('; ');
  };
  return routes.length > 0
    ? [title, bullets(routes.map((route) => `${route.title}: ${why(route)}.`))]
    : [];
}

/** "Power pack: 5 of 7, 43 h, $1,600 ($900 to $2,600). Without the furnace, which is wired in, not plugged in." */
function otherLine(plan: Plan, route: Route, words: Words): string {
  const missed = route.leavesOut.filter((load) => load.must && load.why.code !== 'one-job-only');
  const name = (load: LoadId) => words.inSentence(loadName(plan.home, load));
  const without = missed.map(({ load, why }) => `${name(load)} (${words.leftOut(why)})`);
  const rest = without.length > 0 ? ` Without ${words.listOf([...new Set(without)])}.` : '';
  return `${route.title}: ${carried(plan, route)}, ${howLong(plan, route)}, ${words.figure(route.costUsd)}.${rest}`;
}

function carried(plan: Plan, route: Route): string {
  if (route.carries.length === 0) return 'none';
  const { carried: some, of } = mustCarried(plan.home, route);
  return some === of ? 'all' : `${some} of ${of}`;
}

/** Where cans are still to be filled: today, and then. */
function howLong({ home }: Plan, route: Route): string {
  const stored = onceStored(home, route);
  return stored === null
    ? hoursOf(route)
    : `${hoursOf(route)}; with the cans filled ${hoursOf(stored.route)}`;
}

function hoursOf(route: Route): string {
  if (route.carries.length === 0) return 'no power';
  const { hours } = route.lasting;
  if (hours === null) return 'while the gas flows';
  if (hours.low >= 336) return 'two weeks or more';
  const [likely, careful] = [hours.value, hours.low].map((h) =>
    h >= 336 ? 'two weeks or more' : formatQuantity(Math.round(h), 'h'),
  );
  return likely === careful ? likely! : `${likely} (${careful})`;
}

function priceYears(route: Route): string {
  const years = route.parts.map((p) => p.year).filter((year) => year > 0);
  if (years.length === 0) return 'none';
  const [from, to] = [Math.min(...years), Math.max(...years)];
  return from === to ? String(from) : `${from} to ${to}`;
}
