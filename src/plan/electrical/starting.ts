import type { Home, Season } from '../../home/home';
import { demandOf, runsIn } from '../../home/loads/demand';
import type { LoadId } from '../../home/loads/load-id';
import { traitsOf } from '../../kinds/route-traits';
import { largestStart, type StartingLoad } from '../../physics/largest-start';
import { type StartCure, startCures } from '../../physics/start-cures';
import { type StartOrder, startOrder } from '../../physics/start-order';
import { generatorVoltageDipPercent } from '../../physics/voltage-dip';
import type { Route } from '../../routes/route';
import { practice, practiceRange } from '../../tables/practice-figures';
import { equipmentCost } from '../../tables/prices/equipment-costs';
import { carriedLoads } from './high-end';
import { byInverter, givesPower } from './route-traits';

export interface RouteStarting {
  readonly route: Route['kind'];
  /** What the source lends for a moment, VA. */
  readonly surgeVa: number;
  /** Largest start, and the next largest that starts by itself, on top of what runs, VA. */
  readonly peakVa: number;
  readonly starting: readonly LoadId[];
  /** Every load that starts by itself at once, as after an automatic transfer, VA. */
  readonly allAtOnceVa: number;
  readonly allAtOnceHolds: boolean;
  readonly order: readonly LoadId[];
  /** Pairs that the source starts one after the other, but not at once. */
  readonly keepApart: StartOrder<LoadId>['keepApart'];
  /** Voltage dip of a generator at the hardest step, %; null for an inverter, which trips at its surge limit. */
  readonly dipPercent: number | null;
  readonly limit: StartLimit;
  readonly cure: Cure;
}

/** Where the source gives way: an inverter trips, a generator sags until contactors let go. */
export type StartLimit =
  | { readonly code: 'trips-above'; readonly va: number }
  | { readonly code: 'dip'; readonly percent: number };

/** The cheapest cure that holds; `words` says it. */
export type Cure =
  | { readonly code: 'none' | 'none-one-by-one' | 'keep-starts-apart' }
  | {
      readonly code: 'soft-starter' | 'soft-starter-and-apart';
      readonly on: LoadId | null;
      readonly usdLow: number;
      readonly usdHigh: number;
      readonly year: number;
    }
  /** A source that lends so much for a moment, VA. */
  | { readonly code: 'larger-source'; readonly va: number };

/** Transient reactance of small sets, per unit. */
const REACTANCE = practice('generator-reactance');
/** Dip at which many contactors let go. */
const MOST_DIP_PERCENT = practice('contactor-drop-dip');
/** Start of a motor behind a soft starter, times its running VA: the careful end. */
const SOFT_START_MULTIPLE = practiceRange('soft-start-multiple').high;
const compressors = ['central-ac', 'second-ac', 'heat-pump'];

/**
 * What starting asks of each route that gives power. An inverter is held to the high end of each start.
 * A small battery for one job is left out: it brings its own pump or feeds electronics.
 */
export function startingOf(home: Home, routes: readonly Route[]): RouteStarting[] {
  return routes.filter((route) => starts(route)).map((route) => one(home, route));
}

const starts = (route: Route) =>
  givesPower(route) && !traitsOf[route.kind].oneJob && route.carries.length > 0;

function one(home: Home, route: Route): RouteStarting {
  const surgeVa = route.power!.startVa;
  const loads = startingLoads(home, route);
  const start = largestStart({ loads, startsKeptApart: false });
  const order = startOrder({ loads, surgeVa });
  const automatic = traitsOf[route.kind].automatic;
  const needVa = automatic ? Math.max(start.peakVa, start.allSelfStartingVa) : start.peakVa;
  return {
    route: route.kind,
    surgeVa,
    peakVa: start.peakVa,
    starting: start.starting,
    allAtOnceVa: start.allSelfStartingVa,
    allAtOnceHolds: start.allSelfStartingVa <= surgeVa,
    order: healthFirst(
      home,
      order.steps.map((step) => step.id).filter((id) => motors(loads).includes(id)),
    ),
    keepApart: order.keepApart,
    dipPercent: byInverter(route) ? null : dipOf(route, start.peakVa - start.runningVa),
    limit: byInverter(route)
      ? { code: 'trips-above', va: surgeVa }
      : { code: 'dip', percent: MOST_DIP_PERCENT },
    cure:
      needVa <= surgeVa && start.allSelfStartingVa > surgeVa
        ? { code: 'none-one-by-one' }
        : cureOf({ loads, surgeVa, needVa }),
  };
}

/**
 * Loads as the source sees them in the season of the hardest start, as the size of the route was found: with its soft
 * starter, at the likely end, or at the high end for an inverter.
 */
function startingLoads(home: Home, route: Route): StartingLoad<LoadId>[] {
  const end = byInverter(route) ? 'high' : 'value';
  const carried = carriedLoads(home, route);
  const startVa = (season: Season) => demandOf(carried, [season]).startVa.value;
  const season = home.goalSeasons.reduce((a, b) => (startVa(b) > startVa(a) ? b : a));
  return carried
    .filter((load) => !load.offInOutage && runsIn(load, season))
    .map((load) => ({
      id: load.id,
      runningVa: load.runningVa[end],
      startingVa: load.startVa?.[end] ?? load.runningVa[end],
      selfStarting: load.selfStarting,
    }));
}

/** Nobody waits for breath until the pump runs: health devices come first, the rest as is gentlest for the source. */
function healthFirst(home: Home, ids: readonly LoadId[]): LoadId[] {
  const health = (id: LoadId) =>
    home.loads.some((load) => load.id === id && load.restsOn.includes('medical-devices'));
  return [...ids.filter(health), ...ids.filter((id) => !health(id))];
}

const motors = (loads: readonly StartingLoad<LoadId>[]) =>
  loads.filter((load) => load.startingVa > load.runningVa).map((load) => load.id);

function dipOf(route: Route, stepVa: number): number {
  return generatorVoltageDipPercent({
    startingVa: stepVa,
    ratedVa: route.power!.continuousWatts,
    reactance: REACTANCE,
  });
}

/** The cheapest cure that holds: nothing, starts kept apart by a delay, a soft starter, both, or the next larger source. */
function cureOf(given: { loads: StartingLoad<LoadId>[]; surgeVa: number; needVa: number }): Cure {
  if (given.needVa <= given.surgeVa) return { code: 'none' };
  const cures = startCures({
    loads: given.loads,
    surgeVa: given.surgeVa,
    softStartMultiple: SOFT_START_MULTIPLE,
    softStartable: compressors,
  });
  const enough = cures.find((cure) => cure.enough && cure.kind !== 'nothing')!;
  switch (enough.kind) {
    case 'keep-starts-apart':
      return { code: 'keep-starts-apart' };
    case 'soft-starter':
      return softStarter('soft-starter', enough);
    case 'both':
      return softStarter('soft-starter-and-apart', enough);
    default:
      return { code: 'larger-source', va: given.needVa };
  }
}

function softStarter(
  code: 'soft-starter' | 'soft-starter-and-apart',
  { on }: StartCure<LoadId>,
): Cure {
  const { low, high, year } = equipmentCost('soft-starter');
  return { code, on: on ?? null, usdLow: low, usdHigh: high, year };
}
