import type { Home, Load, Season } from '../../home/home';
import { PACK_IDLE_WATTS, packIdleWatts } from '../../home/loads/pack-idle';
import { type HomeVehicle, vehicleOf } from '../../home/vehicle';
import { isPack } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { StoreLimits } from '../../outage/net-energy';
import type { WalkSystem, WalkVehicle } from '../../outage/walk/system';
import { limitsOf } from '../../routes/battery-hours';
import type { Route } from '../../routes/route';
import { walkGenerator } from '../../routes/walk-generator';

/** What a vehicle's outlet draws by being on, kW. */
const OUTLET_IDLE_KW = PACK_IDLE_WATTS / 1000;

/** What a route feeds, and in which season. */
export interface Fed {
  readonly loads: readonly Load[];
  readonly season: Season;
  /** Counted with care: a thirsty generator, the low end of the fuel, a pack left on day and night. */
  readonly careful?: boolean;
}

/** The sources of a route as they run down in an outage: battery, generator with its fuel, vehicle; no rung in use. */
export function walkSystem(home: Home, route: Route, fed: Fed): WalkSystem {
  const own = traitsOf[route.kind].vehicle ? vehicleOf(home.facts) : null;
  return {
    battery: own === null ? batteryOf(route, fed) : null,
    generator: walkGenerator(route, fed),
    vehicle: own === null ? null : vehicleSource(route, own),
    ladder: [],
  };
}

function batteryOf(route: Route, fed: Fed): WalkSystem['battery'] {
  if (route.usableKwh === null) return null;
  return { capKwh: route.usableKwh, limits: storeLimits(route, fed) };
}

/** Limits of a route's battery; a plug-in pack draws less by being on than an inverter for a house, and is off between uses. */
export function storeLimits(route: Route, { loads, season, careful }: Fed): StoreLimits {
  const limits = limitsOf((route.power?.continuousWatts ?? 0) / 1000);
  if (!isPack(traitsOf[route.kind])) return limits;
  // Switching it off between uses is part of living thriftily.
  const leftOn = careful === true && route.way === 'usual';
  const idleWatts = leftOn ? PACK_IDLE_WATTS : packIdleWatts(loads, season);
  return { ...limits, idleKw: idleWatts / 1000 };
}

function vehicleSource(route: Route, own: HomeVehicle): WalkVehicle {
  return {
    storeKwh: own.storeKwh,
    outKw: (route.power?.continuousWatts ?? 0) / 1000,
    efficiency: limitsOf(1).dischargeEfficiency,
    idleKw: OUTLET_IDLE_KW,
    homeByHour: own.homeByHour,
    helpBelow: 1,
  };
}
