import type { RouteRide } from '../../../plan/ride-through/ride-through';
import type { RideThrough } from '../../../plan/ride-through/ride-through-of';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';
import { table } from '../../markdown/table';
import { sayHardCase } from './say-hard-case';

/** Less goes unserved than anybody would notice, kWh. */
const UNNOTICED_KWH = 0.05;

/** The section of the summary: chances in plain words, what to keep in the battery, the hard case, the neighbors. */
export function sayRideThrough(ride: RideThrough, words: Words): string[] {
  if (ride.routes.length === 0) return [];
  const say = words.household.rideThrough;
  const toFill = ride.routes.some((route) => route.onceStored !== null);
  const sampled = ride.routes.some((route) =>
    route.odds.must?.some((one) => say.hasError(one.standardError)),
  );
  return [
    `## ${say.title}`,
    say.counted(ride.season, toFill),
    shares(ride, words),
    say.twoCounts,
    ...ride.routes.flatMap((route, i) => [
      ...sayRoute(route, ride, words),
      ...(i === 0 ? sayHardCase(route, words) : []),
    ]),
    ...sayOthers(ride, words),
    say.basis(
      ride.routes.map((route) => route.basis),
      sampled,
    ),
  ];
}

function shares({ routes, goalHours }: RideThrough, words: Words): string {
  const say = words.household.rideThrough;
  const lengths = routes[0]!.odds.must?.map((one) => one.hours) ?? [];
  const row = (head: string, cell: (route: RouteRide) => string) => [head, ...routes.map(cell)];
  const shareOf = (route: RouteRide, hours: number) => {
    const one = route.odds.must?.find((each) => each.hours === hours);
    return one === undefined ? say.notCounted : say.share(one.season, one.standardError);
  };
  const stored =
    (of: (stored: NonNullable<RouteRide['onceStored']>) => string) =>
    ({ onceStored }: RouteRide) =>
      onceStored === null ? say.noCans : of(onceStored);
  const letters = routes.map((_, i) => 'ABC'[i]!);
  const key = routes.map(({ called, onceStored }, i) => say.key(letters[i]!, called, onceStored));
  return `${bullets(key)}\n\n${table(
    [say.outageOf, ...letters],
    [
      row(say.carriesRow, ({ carries }) => say.carried(carries)),
      ...lengths.map((hours) =>
        row(say.length(hours, hours === goalHours), (route) => shareOf(route, hours)),
      ),
      row(say.carefulRow(goalHours), ({ carefulShare }) => words.share(carefulShare)),
      ...(routes.some((route) => route.onceStored !== null)
        ? [
            row(
              say.storedRow(goalHours),
              stored(({ share }) => words.share(share)),
            ),
            row(
              say.storedCarefulRow(goalHours),
              stored(({ carefulShare }) => words.share(carefulShare)),
            ),
          ]
        : []),
    ],
  )}`;
}

function sayRoute(route: RouteRide, { goalHours, season }: RideThrough, words: Words): string[] {
  const say = words.household.rideThrough;
  const at = (scope: 'good' | 'all') =>
    route.odds[scope]?.find((one) => one.hours === goalHours)?.season;
  const good = at('good');
  const { fromHalfFull, unservedKwh: kwh, unservedHours: hours, keepByMonth, badCase } = route;
  const lines = [
    say.failsFirst(route),
    ...(good === undefined ? [] : [say.withMore(good, at('all'), goalHours)]),
    ...(fromHalfFull === null ? [] : [say.fromHalfFull(fromHalfFull, goalHours)]),
    ...(kwh > UNNOTICED_KWH ? [say.unserved({ kwh, hours, goalHours, season })] : []),
    ...(keepByMonth === null ? [] : [say.keep(keepByMonth, goalHours)]),
    ...(badCase === null ? [] : [say.hardCase(badCase, season, goalHours)]),
    ...(route.variants.length > 0 ? [say.usedOtherwise(route.variants, goalHours)] : []),
  ];
  const beside =
    route.neighbors.length > 0
      ? [say.stepsBeside(route, goalHours), bullets(route.neighbors.map(say.stepBeside))]
      : [];
  return [lines.join(' '), ...beside];
}

/** The other batteries, at the goal's length. */
function sayOthers(
  { others, othersYears: years, season, goalHours }: RideThrough,
  words: Words,
): string[] {
  const say = words.household.rideThrough;
  const each = others.flatMap(({ called, odds, carries }) => {
    const one = odds.find(({ hours }) => hours === goalHours);
    return one === undefined ? [] : [say.other(called, carries, one.season)];
  });
  return each.length === 0 ? [] : [say.others(each, { goalHours, season, years })];
}
