import type { Home } from '../../home/home';
import type { Route } from '../../routes/route';
import type { RideThrough } from '../ride-through/ride-through-of';

/**
 * Charge kept for outages in each month, kWh, January first: what 9 in 10 outages of the goal's length ask for at
 * their start. Where that was not worked out by month, the route's size by odds holds all year. A household that
 * wants neither lower bills nor use of its sun keeps all of it.
 */
export function keptFor(home: Home, route: Route, ride: RideThrough): number[] {
  const usableKwh = route.usableKwh ?? 0;
  const wish = home.facts.has('other-aims', 'lower-bills', 'use-solar');
  if (!wish) return Array(12).fill(usableKwh);
  const months = ride.routes.find((one) => one.kind === route.kind)?.keepByMonth ?? null;
  if (months !== null) return months.map((share) => Math.min(1, share ?? 1) * usableKwh);
  const asked = route.sizeByOdds?.nineOutagesInTenKwh ?? usableKwh;
  return Array(12).fill(Math.min(usableKwh, asked));
}
