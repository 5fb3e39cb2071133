import type { MustCarried } from '../../../advice/ride/odds';
import type { GoalOnceStored, RouteRide } from '../../../plan/ride-through/ride-through';
import type { RideThrough } from '../../../plan/ride-through/ride-through-of';
import { formatQuantity, formatRange } from '../../../quantity/format-quantity';
import { MONTH_NAMES } from '../../../quantity/month-names';
import type { Words } from '../../../words/words';
import { sayHardCase } from './say-hard-case';

/** What the two counts are: the same words wherever a figure is called likely or careful. */
export const CAREFUL_COUNT =
  'Likely means likely use, the likely fuel and the middle start hour. Careful means the high end of every use, the low end of the fuel, a thirsty generator and a hard start hour.';

/** The section of the summary: chances in plain words, what to keep in the battery, the hard case, the neighbors. */
export function sayRideThrough(ride: RideThrough, words: Words): string[] {
  if (ride.routes.length === 0) return [];
  return [
    '## How it rides through',
    `Out of 100 outages that start at any hour in ${ride.season} with everything full${onFuel(ride)}, so many are ridden through with what the route carries of what must keep running:`,
    table(ride, words),
    CAREFUL_COUNT,
    ...ride.routes.flatMap((route, i) => [
      ...sayRoute(route, ride, words),
      ...(i === 0 ? sayHardCase(route, words) : []),
    ]),
    ...sayOthers(ride, words),
    `Counted from ${[...new Set(ride.routes.map((route) => route.basis))].join('; and ')}.${errorNote(ride)} Weather can be worse than any year drawn.`,
  ];
}

function table({ routes, goalHours }: RideThrough, words: Words): string {
  const lengths = routes[0]!.odds.must?.map((one) => one.hours) ?? [];
  const rows = lengths.map((hours) => {
    const cells = routes.map((route) => {
      const one = route.odds.must?.find((each) => each.hours === hours);
      return one === undefined
        ? 'not counted'
        : `${words.share(one.season)}${sayError(one.standardError)}`;
    });
    const own = hours === goalHours ? ' (your goal)' : '';
    return `| ${formatQuantity(hours, 'h')}${own} | ${cells.join(' | ')} |`;
  });
  return [
    `| Outage of | ${routes.map((route) => route.title).join(' | ')} |`,
    `|---|${routes.map(() => '---').join('|')}|`,
    `| carries of what must run | ${routes.map((route) => sayCarried(route.carries)).join(' | ')} |`,
    ...rows,
    `| ${formatQuantity(goalHours, 'h')}, careful count | ${routes.map(({ carefulShare }) => words.share(carefulShare)).join(' | ')} |`,
    ...storedRows(routes, goalHours, words),
  ].join('\n');
}

/** The fuel is what is here today; what the cans in the parts bring stands in rows of its own. */
const onFuel = ({ routes }: RideThrough) =>
  routes.some((route) => route.onceStored !== null) ? ', on the fuel counted today' : '';

function storedRows(routes: readonly RouteRide[], goalHours: number, words: Words): string[] {
  if (routes.every((route) => route.onceStored === null)) return [];
  const goal = formatQuantity(goalHours, 'h');
  const row = (name: string, of: (stored: GoalOnceStored) => string) =>
    `| ${goal}, once the cans are filled${name} | ${routes.map((route) => (route.onceStored === null ? 'no cans to fill' : of(route.onceStored))).join(' | ')} |`;
  const gallons = (stored: GoalOnceStored) => formatQuantity(stored.gallons, 'gal');
  return [
    row('', (stored) => `${words.share(stored.share)} (${gallons(stored)})`),
    row(', careful count', (stored) => words.share(stored.carefulShare)),
  ];
}

function sayCarried({ things, of }: MustCarried): string {
  return things === of ? `all ${of}` : `${things} of ${of}`;
}

function errorNote({ routes }: RideThrough): string {
  const shown = routes.some((route) =>
    route.odds.must?.some((one) => sayError(one.standardError) !== ''),
  );
  return shown ? ' "Give or take" is one standard error of the sample.' : '';
}

function sayRoute(route: RouteRide, { goalHours, season }: RideThrough, words: Words): string[] {
  const goal = formatQuantity(goalHours, 'h');
  const lines = [`${route.title}: ${route.failsFirst}.`];
  const at = (scope: 'good' | 'all') =>
    route.odds[scope]?.find((one) => one.hours === goalHours)?.season;
  const [good, all] = [at('good'), at('all')];
  if (good !== undefined) {
    lines.push(
      `With what is good to have as well it rides through ${words.share(good)} of 100 outages of ${goal}${all === undefined ? '' : `, with everything ${words.share(all)}`}.`,
    );
  }
  if (route.fromHalfFull !== null)
    lines.push(
      `Starting half full instead of full: ${words.share(route.fromHalfFull)} of 100 outages of ${goal}. Before a storm with warning, fill it up.`,
    );
  if (route.unservedKwh > 0.05)
    lines.push(
      `On average ${formatQuantity(route.unservedKwh, 'kWh')} over ${formatQuantity(Math.max(1, Math.round(route.unservedHours)), 'h')} goes unserved in an outage of ${goal} in ${season}.`,
    );
  if (route.keepByMonth !== null) lines.push(keepLine(route.keepByMonth, goal));
  if (route.badCase !== null) lines.push(badCaseLine(route, season, goal));
  lines.push(...sayVariants(route, goal, words));
  return [lines.join(' '), ...sayNeighbors(route, goal, words)];
}

function sayVariants({ variants }: RouteRide, goal: string, words: Words): string[] {
  if (variants.length === 0) return [];
  const each = variants.map(
    ({ says, share, standardError, carefulShare }) =>
      `${says}: ${words.share(share)}${sayError(standardError)} (careful count ${words.share(carefulShare)})`,
  );
  return [`Used otherwise, of 100 outages of ${goal}: ${each.join('; ')}.`];
}

function sayNeighbors({ title, neighbors }: RouteRide, goal: string, words: Words): string[] {
  if (neighbors.length === 0) return [];
  const each = neighbors.map(
    ({ says, odds, carefulOdds, oddsOnceStored, costUsd: { low, value, high } }) => {
      if (odds === null) return `${says}: does not run or start all of it`;
      const then =
        oddsOnceStored === undefined
          ? ''
          : ` on the fuel counted today, ${words.share(oddsOnceStored)} once the cans are filled`;
      const careful = ` (careful count ${words.share(carefulOdds ?? 0)})`;
      return `${says}: ${words.share(odds)}${careful}${then}, ${formatRange(low, value, high, '$')}`;
    },
  );
  return [
    `One step beside it, of 100 outages of ${goal} (${words.inSentence(title)}):`,
    each.map((one) => `- ${one}`).join('\n'),
  ];
}

/** The other batteries, at the goal's length. */
function sayOthers(
  { others, othersYears, season, goalHours }: RideThrough,
  words: Words,
): string[] {
  const each = others.flatMap(({ title, odds, carries }) => {
    const one = odds.find(({ hours }) => hours === goalHours);
    if (one === undefined) return [];
    const part = carries.things === carries.of ? '' : ` (carries ${sayCarried(carries)})`;
    return [`${title}${part}: ${words.share(one.season)}`];
  });
  if (each.length === 0) return [];
  return [
    `The other batteries that could work here, of 100 outages of ${formatQuantity(goalHours, 'h')} in ${season}, counted from ${othersYears} of the drawn years: ${each.join('; ')}.`,
  ];
}

function keepLine(keep: readonly (number | null)[], goal: string): string {
  if (keep.every((share) => share === null))
    return `It is too small to carry 9 in 10 outages of ${goal} in any month, so all of it is kept for outages, all year.`;
  const words = keep.map(
    (share, m) =>
      `${MONTH_NAMES[m]} ${share === null ? 'full is not enough' : `${Math.ceil(share * 100)} %`}`,
  );
  const same =
    new Set(keep.map((share) => (share === null ? null : Math.ceil(share * 20)))).size === 1;
  if (same)
    return `Kept for outages, to carry 9 in 10 of ${goal}: ${words[0]!.replace('January ', '')}, all year.`;
  return `Kept for outages, to carry 9 in 10 of ${goal}: ${words.join(', ')}.`;
}

function badCaseLine(route: RouteRide, season: string, goal: string): string {
  const bad = route.badCase!;
  const when = `${MONTH_NAMES[bad.month]}, starting at ${bad.hourOfDay}:00`;
  return bad.endsAfter === null
    ? `A hard case from the drawn years (${when}; one in ten in ${season} is harder) is ridden through for all of ${goal}.`
    : `In a hard case from the drawn years (${when}; one in ten in ${season} is harder) it ends after ${formatQuantity(bad.endsAfter, 'h')}.`;
}

function sayError(standardError: number | null): string {
  return standardError === null || standardError < 0.005
    ? ''
    : ` (give or take ${Math.ceil(standardError * 100)})`;
}
