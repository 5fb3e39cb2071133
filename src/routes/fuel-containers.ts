import { healthHangs } from '../home/health-devices';
import type { Home } from '../home/home';
import { part } from './costs';
import { gasolineLimitGal } from './gasoline-limit';
import type { FuelUse, Part } from './route';

/** Fuel the goal takes, in whole gallons: at the likely burn, or at the careful one where health hangs on power. */
export function gallonsForGoal(home: Home, fuel: FuelUse): number {
  const { value, high } = fuel.perDay;
  return Math.ceil(((healthHangs(home) ? high : value) * home.goalHours.value) / 24);
}

/**
 * What brings the fuel to a portable engine: cans for the goal as far as the usual limit goes; for propane a fitter's
 * connection to the house tank, or cylinders where there is none. Nothing for piped gas.
 */
export function fuelContainers(home: Home, fuel: FuelUse): Part[] {
  if (fuel.atHand === null) return [];
  if (fuel.fuel === 'propane') {
    return home.facts.is('gas-supply', 'propane-tank')
      ? [part('gas-line', 1, 'Connection to the propane tank, by a gas fitter')]
      : [part('fuel-storage', 1, 'Approved cylinders for propane')];
  }
  const gallons = Math.min(gallonsForGoal(home, fuel), gasolineLimitGal(home));
  return [part('fuel-storage', 1, `Approved cans for ${gallons} gal of ${fuel.fuel}`)];
}
