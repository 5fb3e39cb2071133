import { batteryHour } from './battery-hour';
import { generatorHour } from './generator-hour';
import { type Hour, isBelow, type Stores } from './stores';
import type { WalkSystem } from './system';
import { vehicleHour, vehicleIdle } from './vehicle-hour';

/**
 * Serve one hour from all sources in their order: generator, vehicle when the battery is low, battery,
 * vehicle again for what is still missing. `hour.deficitKw` comes in as load less sun. Gives what is
 * missing, kWh at the house.
 */
export function serveHour(system: WalkSystem, stores: Stores, hour: Hour): number {
  const { battery, generator, vehicle } = system;
  hour.vehicleKwh = 0;
  if (generator) generatorHour(generator, battery, stores, hour);
  if (vehicle && isBelow(system, stores, vehicle.helpBelow)) {
    hour.deficitKw -= vehicleHour(vehicle, stores, hour, hour.deficitKw);
  }
  if (battery) batteryHour(battery, stores, hour);
  else {
    hour.emptyKwh = Math.max(0, hour.deficitKw);
    hour.overKwh = 0;
  }
  const missing = hour.emptyKwh + hour.overKwh;
  if (!vehicle) return missing;
  const left = missing - vehicleHour(vehicle, stores, hour, missing);
  vehicleIdle(vehicle, stores, hour.hourOfDay);
  return left;
}
