import { loadsIn } from '../../advice/ride/route-loads';
import { storeLimits } from '../../advice/ride/walk-system';
import type { Home, Season } from '../../home/home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { netEnergy } from '../../outage/net-energy';
import { cutToPieces } from '../../outage/season-pieces';
import { monthsOf, type SeasonNet } from '../../routes/battery-hours';
import type { Route } from '../../routes/route';

/**
 * Net energy of a route's battery with what must run, in the hours that outages of the goal's length may meet which start
 * in the season: a quarter of the year, and enough where nothing is said of other months.
 */
export function seasonNet(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  { season, solarKw = route.solarKw ?? 0 }: { season: Season; solarKw?: number },
): SeasonNet {
  const loads = loadsIn(home, route, 'must') ?? [];
  const pieces = { season: monthsOf[season], tailHours: Math.round(home.goalHours.value) };
  const { netKwh } = netEnergy({
    loadKw: cutToPieces(pieces, drawn.loadKw(loads)),
    supplyKw: cutToPieces(pieces, drawn.sunKw(solarKw)),
    limits: storeLimits(route, { loads, season }),
  });
  return { pieces, netKwh };
}
