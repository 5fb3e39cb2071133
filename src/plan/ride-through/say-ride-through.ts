import { formatQuantity, formatRange } from '../../quantity/format-quantity';
import { monthNames } from '../month-names';
import type { RouteRide } from './ride-through';
import { OTHER_YEARS, type RideThrough } from './ride-through-of';

/** The section of the summary: chances in plain words, what to keep in the battery, the hard case, the neighbors. */
export function sayRideThrough(ride: RideThrough): string[] {
  if (ride.routes.length === 0) return [];
  const goal = formatQuantity(ride.goalHours, 'h');
  return [
    '## How it rides through',
    `Out of 100 outages that start at any hour in ${ride.season} with everything full, so many are ridden through with what must keep running:`,
    table(ride.routes),
    ...ride.routes.flatMap((route) => sayRoute(route, goal, ride.season)),
    ...sayOthers(ride),
    `Counted from ${[...new Set(ride.routes.map((route) => route.basis))].join('; and ')}. Weather can be worse than any year drawn.`,
  ];
}

function table(routes: readonly RouteRide[]): string {
  const lengths = routes[0]!.odds.must?.map((one) => one.hours) ?? [];
  const rows = lengths.map((hours, i) => {
    const cells = routes.map((route) => {
      const one = route.odds.must?.[i];
      return one === undefined
        ? 'not counted'
        : `${sayShare(one.season)}${sayError(one.standardError)}`;
    });
    return `| ${formatQuantity(hours, 'h')} | ${cells.join(' | ')} |`;
  });
  return [
    `| Outage of | ${routes.map((route) => route.title).join(' | ')} |`,
    `|---|${routes.map(() => '---').join('|')}|`,
    ...rows,
  ].join('\n');
}

function sayRoute(route: RouteRide, goal: string, season: string): string[] {
  const lines = [`${route.title}: ${route.failsFirst}.`];
  const at = (scope: 'good' | 'all') =>
    route.odds[scope]?.find((one) => formatQuantity(one.hours, 'h') === goal) ??
    route.odds[scope]?.[2];
  const [good, all] = [at('good'), at('all')];
  if (good !== undefined) {
    lines.push(
      `With what is good to have as well it rides through ${sayShare(good.season)} of 100 outages of ${formatQuantity(good.hours, 'h')}${all === undefined ? '' : `, with everything ${sayShare(all.season)}`}.`,
    );
  }
  if (route.fromHalfFull !== null)
    lines.push(
      `Starting half full instead of full: ${sayShare(route.fromHalfFull)} of 100 outages of ${goal}. Before a storm with warning, fill it up.`,
    );
  if (route.unservedKwh > 0.05)
    lines.push(
      `On average ${formatQuantity(route.unservedKwh, 'kWh')} over ${formatQuantity(Math.max(1, Math.round(route.unservedHours)), 'h')} goes unserved in an outage of ${goal} in ${season}.`,
    );
  if (route.keepByMonth !== null) lines.push(keepLine(route.keepByMonth, goal));
  if (route.badCase !== null) lines.push(badCaseLine(route, season, goal));
  const neighbours = route.neighbours.map(
    (n) =>
      `${n.says}: ${sayShare(n.odds)} of 100, ${formatRange(n.costUsd.low, n.costUsd.value, n.costUsd.high, '$')}`,
  );
  if (neighbours.length > 0)
    lines.push(`One step beside it, for outages of ${goal}: ${neighbours.join('; ')}.`);
  return [lines.join(' ')];
}

/** The other batteries, by the shortest length looked at that is not shorter than the goal. */
function sayOthers({ others, season, goalHours }: RideThrough): string[] {
  if (others.length === 0) return [];
  const each = others.flatMap(({ title, odds }) => {
    const one = odds.find(({ hours }) => hours >= goalHours) ?? odds.at(-1);
    return one === undefined
      ? []
      : [{ hours: one.hours, says: `${title}: ${sayShare(one.season)}` }];
  });
  if (each.length === 0) return [];
  return [
    `The other batteries that could work here, of 100 outages of ${formatQuantity(each[0]!.hours, 'h')} in ${season} with what each carries, counted from ${OTHER_YEARS} years: ${each.map(({ says }) => says).join('; ')}.`,
  ];
}

function keepLine(keep: readonly (number | null)[], goal: string): string {
  if (keep.every((share) => share === null))
    return `Even full it does not carry 9 in 10 outages of ${goal} in any month: keep it full for outages all year.`;
  const words = keep.map(
    (share, m) =>
      `${monthNames[m]} ${share === null ? 'full is not enough' : `${Math.ceil(share * 100)} %`}`,
  );
  const same =
    new Set(keep.map((share) => (share === null ? null : Math.ceil(share * 20)))).size === 1;
  if (same)
    return `Kept for outages, to carry 9 in 10 of ${goal}: ${words[0]!.replace('January ', '')}, all year.`;
  return `Kept for outages, to carry 9 in 10 of ${goal}: ${words.join(', ')}.`;
}

function badCaseLine(route: RouteRide, season: string, goal: string): string {
  const bad = route.badCase!;
  const when = `${monthNames[bad.month]}, starting at ${bad.hourOfDay}:00`;
  return bad.endsAfter === null
    ? `A hard case from the drawn years (${when}; one in ten in ${season} is harder) is ridden through for all of ${goal}.`
    : `In a hard case from the drawn years (${when}; one in ten in ${season} is harder) it ends after ${formatQuantity(bad.endsAfter, 'h')}.`;
}

/** "98", "more than 99", "fewer than 1": no certainty is claimed. */
export function sayShare(share: number): string {
  if (share > 0.995) return 'more than 99';
  if (share < 0.005) return 'fewer than 1';
  return String(Math.round(share * 100));
}

function sayError(standardError: number | null): string {
  return standardError === null || standardError < 0.005
    ? ''
    : ` (give or take ${Math.ceil(standardError * 100)})`;
}
