import { loadsIn } from '../../advice/ride/route-loads';
import type { Home, Load, Season } from '../../home/home';
import { demandOf } from '../../home/loads/demand';
import { livedHome } from '../../home/measures/lived-home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { hasFixedBattery, isPack } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { Figure } from '../../quantity/figure';
import { goalHours, goalNet, hoursFrom } from '../../routes/battery-hours';
import { runHours } from '../../routes/fuel/run-hours';
import { fuelHours, fuelUse } from '../../routes/generator-size';
import { hungryShare } from '../../routes/hungry-share';
import { packHours } from '../../routes/kinds/packs';
import type { Route } from '../../routes/route';
import type { GeneratorFuel } from '../../tables/fuels';

/** Hours likely and by the careful count. */
export interface TwoHours {
  readonly likely: number;
  readonly careful: number;
}

/**
 * How long the same equipment lasts with the loads of its way of living, counted as its kind counts hours. Null where no
 * end is foreseen, and where a battery and what refills it, or a vehicle that comes and goes, have no such count.
 */
export function hoursInWay(
  asUsual: Home,
  drawn: SyntheticYears,
  route: Route,
  season: Season,
): TwoHours | null {
  const home = livedHome(asUsual, route.way);
  const loads = loadsIn(home, route, 'must') ?? [];
  if (loads.length === 0) return null;
  const { generator, usableKwh } = route;
  if (generator !== null) return usableKwh === null ? onFuel(asUsual, route, season) : null;
  if (usableKwh === null) return null;
  const traits = traitsOf[route.kind];
  if (isPack(traits)) {
    const { value, low } = packHours(home, loads, usableKwh);
    return { likely: value, careful: low };
  }
  return hasFixedBattery(traits) ? onBattery(home, drawn, route, loads) : null;
}

function onFuel(asUsual: Home, route: Route, season: Season): TwoHours | null {
  const hours = fuelHoursInWay(asUsual, route, season);
  return hours === null ? null : { likely: hours.value, careful: hours.low };
}

/** Hours of a generator alone on the fuel of its route, in the route's way of living; null for any other, and where it is piped. */
export function fuelHoursInWay(asUsual: Home, route: Route, season: Season): Figure | null {
  const { generator, fuel, usableKwh } = route;
  if (generator === null || usableKwh !== null || fuel === null || fuel.atHand === null)
    return null;
  const loads = loadsIn(livedHome(asUsual, route.way), route, 'must') ?? [];
  const { ratedKw, siteKw, runsByHour, type } = generator;
  return fuelHours(
    fuelUse({
      generator: type,
      fuel: fuel.fuel as GeneratorFuel,
      ratedKw,
      siteKw,
      runsByHour: runHours(route, loads, season, runsByHour),
      wattsByHour: demandOf(loads, [season]).wattsByHour[season],
      hungry: hungryShare(loads, season),
      atHand: fuel.tank ?? fuel.atHand,
      ...(fuel.besidePerDay && { besidePerDay: fuel.besidePerDay }),
    }),
  );
}

function onBattery(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  loads: readonly Load[],
): TwoHours {
  const inverterKw = (route.power?.continuousWatts ?? 0) / 1000;
  const goal = goalHours(home, drawn, loads);
  const count = (careful: boolean) =>
    hoursFrom(
      goal.map((hours) => ({
        pieces: hours.pieces,
        netKwh: goalNet(hours, inverterKw, route.solarKw ?? 0, careful),
      })),
      route.usableKwh!,
    );
  return { likely: count(false).value, careful: count(true).low };
}
