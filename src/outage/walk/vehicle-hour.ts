import type { Stores } from './stores';
import type { WalkVehicle } from './system';

/** Energy the vehicle gives the house this hour, kWh: no more than wanted, than its power, than its store. */
export function vehicleHour(
  vehicle: WalkVehicle,
  stores: Stores,
  { hourOfDay, wantedKwh, givenKwh }: { hourOfDay: number; wantedKwh: number; givenKwh: number },
): number {
  if (wantedKwh <= 0 || vehicle.homeByHour[hourOfDay] === 0) return 0;
  const left = Math.min(vehicle.outKw - givenKwh, stores.vehicleKwh * vehicle.efficiency);
  const kwh = Math.max(0, Math.min(wantedKwh, left));
  stores.vehicleKwh = Math.max(0, stores.vehicleKwh - kwh / vehicle.efficiency);
  return kwh;
}
