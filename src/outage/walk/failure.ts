import { NEGLIGIBLE_KWH } from '../every-start';
import type { Hour, Stores } from './stores';
import type { WalkSystem } from './system';

/** Why the first hour that was not fully served was not. */
export type Failure =
  | 'battery-empty'
  | 'power-limit'
  | 'fuel-gone'
  | 'engine-off'
  | 'vehicle-gone'
  | 'vehicle-away'
  | 'no-source';

/** The reason an hour was not fully served, from the stores after it. */
export function whyFailed(system: WalkSystem, stores: Stores, hour: Hour): Failure {
  if (hour.overKwh > NEGLIGIBLE_KWH) return 'power-limit';
  if (system.generator && stores.fuel <= 0) return 'fuel-gone';
  if (system.battery) return 'battery-empty';
  if (system.generator) {
    return system.generator.runsByHour[hour.hourOfDay] === 0 ? 'engine-off' : 'power-limit';
  }
  if (system.vehicle === null) return 'no-source';
  if (system.vehicle.homeByHour[hour.hourOfDay] === 0) return 'vehicle-away';
  return stores.vehicleKwh > 0 ? 'power-limit' : 'vehicle-gone';
}
