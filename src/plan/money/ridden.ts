import type { MoneyRange } from '../../bill/money-range';
import type { Home } from '../../home/home';
import type { Route } from '../../routes/route';
import { fuelPrice } from '../../tables/fuel-prices';
import type { Outlook } from '../outlook';

/** What a year of expected outages asks of a route. */
export interface Ridden {
  /** Hours a year it is expected to carry the home, ordinary and major outages apart. */
  readonly ordinary: number;
  readonly major: number;
  readonly backupKwh: number;
  readonly fuelPerYear: MoneyRange;
}

/**
 * Hours ridden through: of each outage of the mean length, as much as the route lasts from full. A mean hides the
 * spread of lengths, so a route that barely outlasts it is counted a little too well.
 */
export function riddenThrough(home: Home, route: Route, outlook: Outlook): Ridden {
  if (route.carries.length === 0) {
    return { ordinary: 0, major: 0, backupKwh: 0, fuelPerYear: { low: 0, likely: 0, high: 0 } };
  }
  const ordinary = carried(route, outlook.ordinaryTimes.value, outlook.ordinaryHours.value);
  const major = carried(route, outlook.majorTimes.value, outlook.majorHours.value);
  const hours = ordinary + major;
  const kwhPerHour = home.loads
    .filter((load) => route.carries.includes(load.name))
    .reduce((sum, load) => sum + load.kwhPerDay.mild.value / 24, 0);
  return {
    ordinary,
    major,
    backupKwh: hours * kwhPerHour,
    fuelPerYear: fuelCost(route, hours),
  };
}

function carried(route: Route, timesPerYear: number, hoursPerYear: number): number {
  const { hours } = route.lasting;
  if (!(timesPerYear > 0 && hoursPerYear > 0)) return 0;
  const meanHours = hoursPerYear / timesPerYear;
  const share = hours === null ? 1 : Math.min(1, hours.value / meanHours);
  return hoursPerYear * share;
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
