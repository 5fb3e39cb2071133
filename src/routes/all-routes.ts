import type { Widths } from '../home/answer-figure';
import type { Home } from '../home/home';
import { livedHome } from '../home/measures/lived-home';
import type { SyntheticYears } from '../home/weather/synthetic-years';
import { type RouteKind, routeKinds } from '../kinds/route-kind';
import { powerSteps } from '../tables/generic-steps';
import { buysGenerator } from './buys-generator';
import { fedHome } from './fed-home';
import { batteryGenerator } from './kinds/battery-generator';
import { batteryCircuits, batterySolar, batteryWhole } from './kinds/fixed-battery';
import { nightSteps } from './kinds/night-battery';
import { ownBatteryRoute } from './kinds/own-battery';
import { type Buying, generatorCords, generatorInlet } from './kinds/portable-generator';
import { powerPack, powerPackSizes } from './kinds/power-pack';
import { preparation } from './kinds/preparation';
import { singleBattery, singleBatterySizes } from './kinds/single-battery';
import { standbyGenerator } from './kinds/standby-generator';
import { vehicle, vehicleInlet } from './kinds/vehicle';
import { cannot } from './make-route';
import { mustMissed, withAllLeftOut } from './must-carried';
import { loadsOf } from './pick-loads';
import type { Route } from './route';
import { oneSize, type SizedKind, whole } from './sized';

/** Sizes and prices one kind for a home; null where the home has nothing of the kind. */
type Sizer = (home: Home, drawn: SyntheticYears, widths: Widths) => SizedKind | null;

/** How each kind is sized: a kind without a row here does not compile, and so is in every plan. */
const sizers: Readonly<Record<RouteKind, Sizer>> = {
  preparation: () => oneSize(preparation()),
  'own-battery': (home, drawn) => {
    const route = ownBatteryRoute(home, drawn);
    return route === null ? null : oneSize(route);
  },
  'single-battery': (home) => ofSizes(singleBattery(home), () => singleBatterySizes(home)),
  'power-pack': (home) => ofSizes(powerPack(home), () => powerPackSizes(home)),
  'engine-cords': (home, _, widths) =>
    ofGenerator('engine', home, (lived, buying) => generatorCords(lived, widths, buying)),
  'engine-inlet': (home, _, widths) =>
    ofGenerator('engine', home, (lived, buying) => generatorInlet(lived, widths, buying)),
  'standby-engine': (home, _, widths) =>
    ofGenerator('standby', home, (lived, buying) => standbyGenerator(lived, widths, buying)),
  'battery-circuits': batteryCircuits,
  'battery-whole': batteryWhole,
  'battery-solar': batterySolar,
  'battery-engine': (home, drawn, widths) => {
    const route = batteryGenerator(home, drawn, widths);
    return ofSizes(route, () =>
      nightSteps()
        .filter((kwh) => kwh !== route.nameplateKwh)
        .map((kwh) => batteryGenerator(home, drawn, widths, kwh)),
    );
  },
  vehicle: (home) => oneSize(vehicle(home)),
  'vehicle-inlet': (home) => {
    const route = vehicleInlet(home);
    return route === null ? null : oneSize(route);
  },
};

/** Every route, sized for this home, plainest first; those that cannot work here say why. */
export function allRoutes(home: Home, drawn: SyntheticYears, widths: Widths): Route[] {
  return allKinds(home, drawn, widths).map(({ route }) => route);
}

/** The same with all sizes of each. */
export function allKinds(home: Home, drawn: SyntheticYears, widths: Widths): SizedKind[] {
  return routeKinds.flatMap((kind) => sizedKind(kind, home, drawn, widths) ?? []);
}

/** One kind, sized for this home with all its sizes; null where the home has nothing of the kind. */
export function sizedKind(
  kind: RouteKind,
  home: Home,
  drawn: SyntheticYears,
  widths: Widths,
): SizedKind | null {
  const sized = sizers[kind](fedHome(kind, home), drawn, widths);
  if (sized === null) return null;
  const { route, sizes } = sized;
  if (route.kind !== kind) throw new Error(`the sizer of ${kind} makes a route ${route.kind}`);
  const { way } = home;
  if (kind === 'preparation') return oneSize({ ...route, way });
  if (loadsOf(home, ['must']).length === 0) return oneSize({ ...forNothing(home, route), way });
  const told = (one: Route) => withAllLeftOut(home, { ...one, way });
  return {
    route: told(route),
    sizes: () =>
      sizes().map((size) => ({ route: told(size.route), whole: () => told(size.whole()) })),
  };
}

/** A kind whose sizes are made one by one: that of the plan among them, those that cannot be used left out. */
function ofSizes(route: Route, sizes: () => readonly Route[]): SizedKind {
  if (route.verdict === 'cannot') return oneSize(route);
  return {
    route,
    sizes: () =>
      [route, ...sizes().filter((one) => one.costUsd.value !== route.costUsd.value)]
        .filter(({ verdict }) => verdict !== 'cannot')
        .map(whole),
  };
}

type Making = (home: Home, buying: Buying) => Route;
type Steps = 'engine' | 'standby';

/**
 * The generator that is there, and beside it the sizes to buy that carry more of what must run. One that carries it all in
 * the thrifty way of living is not bought a second time.
 */
function ofGenerator(steps: Steps, home: Home, make: Making): SizedKind {
  const there = ofWatts(steps, (mostWatts) => make(home, { mostWatts }));
  if (there.route.verdict === 'cannot' || buysGenerator(there.route)) return there;
  const missed = leastMissed(home, there.route, make);
  if (missed === 0) return there;
  const bought = ofWatts(steps, (mostWatts) => make(home, { mostWatts, anew: true }));
  const carriesMore = (route: Route) => missedIn(home, route) < missed;
  return {
    route: there.route,
    sizes: () => [...there.sizes(), ...bought.sizes().filter(({ route }) => carriesMore(route))],
  };
}

/** As large as all it is to carry asks, and every smaller one with what that leaves out. */
function ofWatts(steps: Steps, make: (mostWatts: number) => Route): SizedKind {
  const route = make(Infinity);
  const ratedWatts = buysGenerator(route) ? 1000 * route.generator!.ratedKw : 0;
  const smaller = powerSteps(steps).filter(({ watts }) => watts < ratedWatts - 1);
  return ofSizes(route, () => smaller.map(({ watts }) => make(watts)));
}

/** How many of the things that must run the one that is there cannot carry, in the way of living that asks least of it. */
function leastMissed(home: Home, there: Route, make: Making): number {
  const missed = missedIn(home, there);
  if (missed === 0) return 0;
  const thrifty = livedHome(home, 'thrifty');
  return Math.min(missed, missedIn(thrifty, make(thrifty, {})));
}

/** A route here has no way of living yet: it is that of the home it was made for. */
const missedIn = (home: Home, route: Route): number =>
  mustMissed(home, { ...route, way: home.way }).length;

/** Without a load that must run there is nothing to size a source for. */
function forNothing({ facts }: Home, route: Route): Route {
  const code = facts.told('must-run') ? 'nothing-must-run' : 'must-run-unknown';
  return cannot(route.called, [{ code }]);
}
