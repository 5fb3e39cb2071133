import type { Hour, Stores } from './stores';
import type { WalkVehicle } from './system';

/** Energy the vehicle gives the house now, kWh: no more than wanted, than its power, than its store. */
export function vehicleHour(
  vehicle: WalkVehicle,
  stores: Stores,
  hour: Hour,
  wantedKwh: number,
): number {
  if (wantedKwh <= 0 || vehicle.homeByHour[hour.hourOfDay] === 0) return 0;
  const left = Math.min(vehicle.outKw - hour.vehicleKwh, stores.vehicleKwh * vehicle.efficiency);
  const kwh = Math.max(0, Math.min(wantedKwh, left));
  stores.vehicleKwh = Math.max(0, stores.vehicleKwh - kwh / vehicle.efficiency);
  hour.vehicleKwh += kwh;
  return kwh;
}

/** What its outlet draws by being on, for as long as it stands at home. */
export function vehicleIdle(vehicle: WalkVehicle, stores: Stores, hourOfDay: number): void {
  if (vehicle.homeByHour[hourOfDay] === 0) return;
  stores.vehicleKwh = Math.max(0, stores.vehicleKwh - vehicle.idleKw);
}
