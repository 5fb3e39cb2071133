import type { MoneyRange } from '../../bill/lifecycle/money-range';
import type { Home } from '../../home/home';
import { livedHome } from '../../home/measures/lived-home';
import { carriedHours } from '../../outage/expected-outages';
import type { Figure } from '../../quantity/figure';
import { mustCarried } from '../../routes/must-carried';
import type { Route } from '../../routes/route';
import { fuelPrice } from '../../tables/prices/fuel-prices';
import type { Outlook } from '../outlook';

/** What a year of expected outages asks of a route. */
export interface Ridden {
  /** Hours a year it is expected to run what it carries, ordinary and major outages apart. */
  readonly ordinary: number;
  readonly major: number;
  /** How many of the things that must keep running it carries. */
  readonly carried: number;
  readonly of: number;
  readonly backupKwh: number;
  readonly fuelPerYear: MoneyRange;
}

/**
 * Hours ridden through: of each outage, as much as the route lasts from full in the hardest season of the goal, over
 * all lengths an outage may have.
 */
export function riddenThrough(home: Home, route: Route, outlook: Outlook): Ridden {
  const carries = mustCarried(home, route);
  if (route.carries.length === 0) {
    const fuelPerYear = { low: 0, likely: 0, high: 0 };
    return { ordinary: 0, major: 0, ...carries, backupKwh: 0, fuelPerYear };
  }
  const lastsHours = route.lasting.hours?.value ?? null;
  const hoursOf = (times: Figure, hours: Figure) =>
    carriedHours({ timesPerYear: times.value, hoursPerYear: hours.value, lastsHours });
  const ordinary = hoursOf(outlook.ordinaryTimes, outlook.ordinaryHours);
  const major = hoursOf(outlook.majorTimes, outlook.majorHours);
  const hours = ordinary + major;
  const kwhPerHour = livedHome(home, route.way)
    .loads.filter((load) => route.carries.includes(load.id))
    .reduce((sum, load) => sum + load.kwhPerDay.mild.value / 24, 0);
  return {
    ordinary,
    major,
    ...carries,
    backupKwh: hours * kwhPerHour,
    fuelPerYear: fuelCost(route, hours),
  };
}

/** True when a route carries all that must keep running: only then is an hour of it an hour ridden through. */
export function carriesAll({ carried, of }: Ridden): boolean {
  return carried > 0 && carried === of;
}

/** Fuel burned in the hours ridden through, and in a test of half an hour each month. */
function fuelCost(route: Route, hours: number): MoneyRange {
  const price = route.fuel === null ? null : fuelPrice(route.fuel.fuel);
  if (price === null || route.fuel === null) return { low: 0, likely: 0, high: 0 };
  const days = (hours + 12 * 0.5) / 24;
  const { low, value, high } = route.fuel.perDay;
  return {
    low: low * days * price.low,
    likely: value * days * price.likely,
    high: high * days * price.high,
  };
}
