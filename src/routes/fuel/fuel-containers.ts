import type { Home } from '../../home/home';
import { healthHangs } from '../../home/people/health-devices';
import type { GeneratorFuel } from '../../tables/fuels';
import { part, total } from '../costs';
import type { FuelUse, Part, Route } from '../route';
import { gasolineLimitGal } from './gasoline-limit';

/** The route without cans for more fuel than is kept today; null where none are among its parts, or nothing is kept. */
export function withoutCans(home: Home, route: Route): Route | null {
  const { fuel } = route;
  const kept = keptGal(home, route.fuel?.fuel);
  const parts = route.parts.filter((one) => one.equipmentClass !== 'fuel-storage');
  if (fuel === null || kept === 0 || parts.length === route.parts.length) return null;
  return { ...route, parts, costUsd: total(parts), fuel: { ...fuel, noMoreThanGal: kept } };
}

/** Fuel the goal takes, in whole gallons: at the likely burn, or at the careful one where health hangs on power. */
export function gallonsForGoal(home: Home, fuel: FuelUse): number {
  const { value, high } = fuel.perDay;
  return Math.ceil(((healthHangs(home) ? high : value) * home.goalHours.value) / 24);
}

/** Gallons there are once the cans are filled: for the goal, as far as the usual limit goes; null without cans. */
export function cansGal(home: Home, fuel: FuelUse): number | null {
  if (fuel.atHand === null || fuel.fuel === 'propane') return null;
  if (fuel.noMoreThanGal !== undefined) return fuel.noMoreThanGal;
  return Math.max(
    keptGal(home, fuel.fuel),
    Math.min(gallonsForGoal(home, fuel), gasolineLimitGal(home)),
  );
}

/** The question that tells how much of a fuel in cans or in a tank of its own is kept. */
export const keptIn = (fuel: GeneratorFuel | undefined) =>
  fuel === 'diesel' ? 'diesel-gallons' : 'gasoline-gallons';

/** Gallons kept today of gasoline, or of diesel where the generator burns it; 0 where none was told. */
export function keptGal({ facts }: Home, fuel?: GeneratorFuel): number {
  const id = keptIn(fuel);
  return facts.told(id) ? facts.number(id)! : 0;
}

/** Where none is kept the count leans on cans still to be filled, and on no more of them than are bought. */
export function leansOnCans(home: Home, fuel: FuelUse): FuelUse {
  const { atHand } = fuel;
  const gallons = cansGal(home, fuel);
  if (atHand?.source.kind !== 'assumed' || gallons === null || gallons >= atHand.value) return fuel;
  const low = Math.min(atHand.low, gallons);
  return { ...fuel, atHand: { ...atHand, value: gallons, low, high: gallons } };
}

/**
 * What brings the fuel to a portable generator: cans for what is still to be stored; for propane a fitter's connection to
 * the house tank, or cylinders where there is none. Nothing for piped gas, and where enough is kept.
 */
export function fuelContainers(home: Home, fuel: FuelUse): Part[] {
  if (fuel.atHand === null) return [];
  if (fuel.fuel === 'propane') {
    return home.facts.is('gas-supply', 'propane-tank')
      ? [part('gas-line', 1, { code: 'connection-to-tank' })]
      : [part('fuel-storage', 1, { code: 'propane-cylinders' })];
  }
  const kept = keptGal(home, fuel.fuel);
  const missing = Math.ceil(cansGal(home, fuel)! - kept);
  if (missing <= 0) return [];
  const cans = { code: 'cans', gallons: missing, more: kept > 0, fuel: fuel.fuel } as const;
  return [part('fuel-storage', 1, cans)];
}
