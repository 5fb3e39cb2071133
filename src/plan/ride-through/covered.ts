import { sampledStarts } from '../../advice/ride/sampled-starts';
import { HARD_START, MIDDLE_START } from '../../advice/ride/start-shares';
import { type Walkable, walkableOf } from '../../advice/ride/walkable';
import type { Home, Load, Season } from '../../home/home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { quantileInPlace } from '../../outage/quantile';
import { manyWalks } from '../../outage/walk/many-walks';
import type { Route } from '../../routes/route';
import { LENGTHS } from './lengths';

/**
 * How long some loads alone are covered by a route, by two counts. Likely: likely use, likely fuel, the middle start
 * hour. Careful: the high end of every use, the low end of the fuel, a thirsty generator, a start hour of which one in
 * ten is harder. Hours are counted up to two weeks.
 */
export interface Covered {
  readonly likelyHours: number;
  readonly carefulHours: number;
  /** Shares of the outages of the goal's length that start in the season, 0 to 1. */
  readonly likelyShare: number;
  readonly carefulShare: number;
}

export function coveredBy(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  { loads, season }: { loads: readonly Load[]; season: Season },
): Covered {
  const goal = Math.round(home.goalHours.value);
  const count = (careful: boolean) =>
    hoursOf(walkableOf(home, drawn, route, { classes: [loads], season, careful }), goal);
  const [likely, careful] = [count(false), count(true)];
  return {
    likelyHours: quantileInPlace(likely.hours, MIDDLE_START) ?? 0,
    carefulHours: quantileInPlace(careful.hours, HARD_START) ?? 0,
    likelyShare: likely.share,
    carefulShare: careful.share,
  };
}

/** Hours served from sampled starts in the season, and the share that reaches the goal. */
function hoursOf(way: Walkable, goal: number): { hours: Float64Array; share: number } {
  const { system, record, startKwh, months } = way;
  const walk = manyWalks(system, record);
  const outageHours = Math.max(goal, LENGTHS.at(-1)!);
  const hours = Float64Array.from(
    sampledStarts(record.solarKw.length, months),
    (start) => walk({ start, outageHours, startKwh }).hoursServed,
  );
  const reached = hours.filter((served) => served >= goal).length;
  return { hours, share: hours.length === 0 ? 0 : reached / hours.length };
}
