import type { Home, Load, Season } from '../../home/home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { traitsOf } from '../../kinds/route-traits';
import type { MonthSpan as Months } from '../../outage/season';
import type { WalkRecord, WalkRung, WalkSystem } from '../../outage/walk/system';
import { HOURS_PER_YEAR } from '../../physics/weather/calendar';
import { monthsOf } from '../../routes/battery-hours';
import { hungryKw, hungryShare } from '../../routes/hungry-share';
import type { Route } from '../../routes/route';
import { loadsIn } from './route-loads';
import { walkSystem } from './walk-system';

/** A way to be fed in an outage, with the hours of loads and sun it meets, from full. */
export interface Walkable {
  readonly system: WalkSystem;
  readonly record: WalkRecord;
  readonly startKwh: number;
  readonly months: Months;
}

export interface WalkWish {
  readonly season: Season;
  /** Loads by class, first those that stay on to the end; rungs speak of the others by their place here. */
  readonly classes: readonly (readonly Load[])[];
  readonly ladder?: readonly WalkRung[];
  /** Hungry use, the low end of the fuel, a thirsty generator. */
  readonly careful?: boolean;
  /** Of the drawn years the first so many; all where it is left out. */
  readonly years?: number;
}

/** A route with the loads it is to carry, ready to be walked hour by hour. */
export function walkableOf(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  wish: WalkWish,
): Walkable {
  const { season, careful = false } = wish;
  const fed = { loads: wish.classes.flat(), season, careful };
  const mostKw = (route.power?.continuousWatts ?? Infinity) / 1000;
  const years = Math.min(wish.years ?? drawn.years, drawn.years);
  return {
    system: { ...walkSystem(home, route, fed), ladder: wish.ladder ?? [] },
    record: {
      loadsKw: wish.classes.map((loads) => {
        const likelyKw = drawn.loadKw(loads, years);
        return careful ? hungryKw(likelyKw, hungryShare(loads, season), mostKw) : likelyKw;
      }),
      solarKw: drawn.sunKw(route.solarKw ?? 0).subarray(0, years * HOURS_PER_YEAR),
    },
    startKwh: traitsOf[route.kind].vehicle ? 0 : (route.usableKwh ?? 0),
    months: monthsOf[season],
  };
}

/** A route with what must keep running. */
export function mustWalkable(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  season: Season,
): Walkable {
  return walkableOf(home, drawn, route, { classes: [loadsIn(home, route, 'must') ?? []], season });
}
