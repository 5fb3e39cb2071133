import type { Home, Load, Season } from '../home/home';
import type { SyntheticYears } from '../home/weather/synthetic-years';
import { everyNthStart } from '../outage/every-nth-start';
import { quantileInPlace } from '../outage/quantile';
import { manyWalks } from '../outage/walk/many-walks';
import { HOURS_PER_YEAR } from '../physics/weather/calendar';
import { type Figure, figure } from '../quantity/figure';
import { formula } from '../quantity/figure-arithmetic';
import { limitsOf, longestCounted, monthsOf, ODDS } from './battery-hours';
import { hungryKw, hungryShare } from './hungry-share';
import type { Route } from './route';
import { type WithGenerator, walkGenerator } from './walk-generator';

/** Start hours this far apart come upon every hour of the day: neither 5 x 37 nor 11 x 37 shares a factor with 24. */
const everyHours = (years: number) => (years > FEW_YEARS ? 185 : 407);
/** Drawn years of the sums beside a question, which must be quick. */
const FEW_YEARS = 5;

/** Of the drawn years the first so many: the middle start and a hard one want no more. */
const YEARS = 20;

/** Drawn years walked, and how far apart their starts are. */
export const sampledHours = (years: number) => ({
  years: Math.min(years, YEARS),
  every: everyHours(years),
});

/** What of a route with a battery and a generator is walked. */
export type Walked = WithGenerator & Pick<Route, 'power' | 'solarKw'>;

/**
 * How long a battery with a generator lasts from full, h, up to the longest outage counted, walked hour by hour from
 * sampled starts in the hardest of the goal's seasons: likely, the middle start; low, the careful count (hungry use, the
 * low end of the fuel, a thirsty generator, a start of which one in ten is harder); high, a lucky start at likely use.
 */
export function walkedHours(
  home: Home,
  drawn: SyntheticYears,
  route: Walked,
  loads: readonly Load[],
): Figure {
  const { value, low, high } = drawn.counted(loads, walkedBy(home, route, loads), () => {
    const bySeason = (careful: boolean) =>
      home.goalSeasons.map((season) => servedHours(home, drawn, route, { loads, season, careful }));
    const [likely, careful] = [bySeason(false), bySeason(true)];
    const at = (all: readonly Float64Array[], share: number) =>
      Math.min(...all.map((served) => quantileInPlace(served, share) ?? 0));
    return { value: at(likely, 0.5), low: at(careful, 1 - ODDS), high: at(likely, ODDS) };
  });
  return figure({
    value,
    low: Math.min(value, low),
    high: Math.max(value, high),
    unit: 'h',
    is: 'walked-hours',
    source: {
      ...formula('walked'),
      ends: 'careful-or-lucky',
    },
  });
}

/** Whatever such a walk rests on beside weather, roof and the likely use of the loads. */
function walkedBy(home: Home, route: Walked, loads: readonly Load[]): (string | number)[] {
  const seasons = home.goalSeasons.map((season) =>
    JSON.stringify([
      season,
      hungryShare(loads, season),
      walkGenerator(route, { loads, season, careful: false }),
      walkGenerator(route, { loads, season, careful: true }),
    ]),
  );
  const { power, usableKwh, solarKw } = route;
  return [
    'walked',
    ...seasons,
    power?.continuousWatts ?? 0,
    usableKwh ?? 0,
    solarKw ?? 0,
    longestCounted(home),
  ];
}

function servedHours(
  home: Home,
  drawn: SyntheticYears,
  route: Walked,
  fed: { loads: readonly Load[]; season: Season; careful: boolean },
): Float64Array {
  const inverterKw = (route.power?.continuousWatts ?? 0) / 1000;
  const capKwh = route.usableKwh ?? 0;
  const hoursWalked = YEARS * HOURS_PER_YEAR;
  const likelyKw = drawn.loadKw(fed.loads).subarray(0, hoursWalked);
  const record = {
    loadsKw: [
      fed.careful ? hungryKw(likelyKw, hungryShare(fed.loads, fed.season), inverterKw) : likelyKw,
    ],
    solarKw: drawn.sunKw(route.solarKw ?? 0).subarray(0, hoursWalked),
  };
  const system = {
    battery: { capKwh, limits: limitsOf(inverterKw) },
    generator: walkGenerator(route, fed),
    vehicle: null,
    ladder: [],
  };
  const walk = manyWalks(system, record);
  const outageHours = longestCounted(home);
  return Float64Array.from(
    everyNthStart(likelyKw.length, monthsOf[fed.season], everyHours(drawn.years)),
    (start) => walk({ start, outageHours, startKwh: capKwh }).hoursServed,
  );
}
