import type { Home, Season } from '../../home/home';
import type { LoadId } from '../../home/loads/load-id';
import { livedHome } from '../../home/measures/lived-home';
import { isHealthDevice } from '../../home/people/health-devices';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import type { Route } from '../../routes/route';
import { type Covered, coveredBy } from './covered';

/** How long the health devices are covered by a route in its thrifty use: all else off from the first minute. */
export interface HealthFirst {
  /** Ids of the devices it carries, and of those it does not. */
  readonly carried: readonly LoadId[];
  readonly missed: readonly LoadId[];
  /** Null where it carries none of them. */
  readonly covered: Covered | null;
}

/** Null where no device was named. */
export function healthFirst(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  season: Season,
): HealthFirst | null {
  const devices = livedHome(home, route.way).loads.filter(isHealthDevice);
  if (devices.length === 0) return null;
  const loads = devices.filter(({ id }) => route.carries.includes(id));
  const counted = loads.length > 0 && (route.usableKwh !== null || route.generator !== null);
  return {
    carried: loads.map(({ id }) => id),
    missed: devices.filter((load) => !loads.includes(load)).map(({ id }) => id),
    covered: counted ? coveredBy(home, drawn, route, { loads, season }) : null,
  };
}
