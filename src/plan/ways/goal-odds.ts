import { loadsIn } from '../../advice/ride/route-loads';
import { storeLimits } from '../../advice/ride/walk-system';
import { mustWalkable, type Walkable } from '../../advice/ride/walkable';
import { walkedShare } from '../../advice/ride/walked-odds';
import type { Home, Season } from '../../home/home';
import { livedHome } from '../../home/measures/lived-home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { traitsOf } from '../../kinds/route-traits';
import { generatorOdds } from '../../outage/generator-odds';
import { hoursSurvived } from '../../outage/hours-survived';
import { netEnergy } from '../../outage/net-energy';
import { shareOfSeason } from '../../outage/season-starts';
import { borrowHours, giveBack } from '../../outage/spare-hours';
import { SAMPLE_EVERY_HOURS } from '../../outage/walk/sampled-odds';
import { monthsOf } from '../../routes/battery-hours';
import type { Route } from '../../routes/route';
import { plainOdds } from '../ride-through/passed-odds';

/**
 * Share of the outages of the goal's length that start in the season and are ridden through with what must run, in the
 * route's own way of living; counted or sampled as `ride-through` does for its kind, so that both ways compare.
 */
export function goalOdds(
  asUsual: Home,
  drawn: SyntheticYears,
  route: Route,
  season: Season,
): number {
  const home = livedHome(asUsual, route.way);
  const goal = Math.round(home.goalHours.value);
  if (route.generator === null && route.usableKwh !== null && !traitsOf[route.kind].vehicle) {
    return onBattery(home, drawn, route, { season, goal });
  }
  const way = mustWalkable(home, drawn, route, season);
  if (isGeneratorAlone(way)) {
    const { system, record } = way;
    const alone = { loadKw: record.loadsKw[0]!, generator: system.generator!, limitHours: goal };
    return plainOdds(generatorOdds(alone, [goal]), season)[0]!.season;
  }
  return walkedShare(way, goal, SAMPLE_EVERY_HOURS).share;
}

function onBattery(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  { season, goal }: { season: Season; goal: number },
): number {
  const loads = loadsIn(home, route, 'must') ?? [];
  const loadKw = drawn.loadKw(loads);
  const spare = { netKwh: borrowHours(loadKw.length), overloadKwh: borrowHours(loadKw.length) };
  const supplyKw = drawn.sunKw(route.solarKw ?? 0);
  const energy = netEnergy(
    { loadKw, supplyKw, limits: storeLimits(route, { loads, season }) },
    spare,
  );
  const hours = borrowHours(loadKw.length);
  const survived = hoursSurvived({ ...energy, capKwh: route.usableKwh!, limitHours: goal }, hours);
  const share = shareOfSeason(monthsOf[season], survived.length, (s) => survived[s]! >= goal);
  giveBack(spare.netKwh, spare.overloadKwh);
  giveBack(hours);
  return share;
}

function isGeneratorAlone({ system: { generator, battery, vehicle } }: Walkable): boolean {
  return generator !== null && battery === null && vehicle === null;
}
