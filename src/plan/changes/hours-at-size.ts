import type { Home } from '../../home/home';
import { demandOf } from '../../home/loads/demand';
import { livedHome } from '../../home/measures/lived-home';
import { fuelHours, fuelUse } from '../../routes/generator-size';
import { hungryShare } from '../../routes/hungry-share';
import { hardestSeason } from '../../routes/kinds/portable-generator';
import { countedHours } from '../../routes/make-route';
import type { Route } from '../../routes/route';

/**
 * A generator route with a generator of another size under the same loads and fuel: what that burns a day, and how long the
 * fuel lasts then, worked out as for the size advised. Null beside a battery, whose hours hang on more than the fuel.
 *
 * @param ratedKw rating on the label of the other generator, kW
 */
export function hoursAtSize(home: Home, route: Route, ratedKw: number): Route | null {
  const { generator, fuel, usableKwh } = route;
  if (generator === null || fuel === null || usableKwh !== null) return null;
  const lived = livedHome(home, route.way);
  const carried = lived.loads.filter(({ id }) => route.carries.includes(id));
  const demand = demandOf(carried, lived.goalSeasons);
  const season = hardestSeason(lived, { demand });
  const size = { ratedKw, siteKw: (ratedKw * generator.siteKw) / generator.ratedKw };
  const burns = fuelUse({
    generator: generator.type,
    fuel: fuel.fuel,
    ...size,
    wattsByHour: demand.wattsByHour[season],
    runsByHour: generator.runsByHour,
    hungry: hungryShare(carried, season),
    atHand: fuel.tank ?? fuel.atHand,
    ...(fuel.besidePerDay !== undefined && { besidePerDay: fuel.besidePerDay }),
    ...(fuel.besideFor !== undefined && { besideFor: fuel.besideFor }),
  });
  const used = { ...fuel, ...burns };
  const hours = fuelHours(used);
  const lasting =
    hours === null
      ? route.lasting
      : {
          ...route.lasting,
          hours,
          reachesGoal: countedHours(lived, hours) >= lived.goalHours.value,
        };
  return { ...route, generator: { ...generator, ...size }, fuel: used, lasting };
}
