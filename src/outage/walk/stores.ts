import type { WalkSystem } from './system';

/** What is left of everything that runs down in an outage. Changed hour by hour. */
export interface Stores {
  chargeKwh: number;
  fuel: number;
  vehicleKwh: number;
}

/** The stores as the outage finds them. */
export function storesAtStart(system: WalkSystem, startKwh: number): Stores {
  return {
    chargeKwh: system.battery ? Math.min(startKwh, system.battery.capKwh) : 0,
    fuel: system.engine ? system.engine.fuelAtStart : 0,
    vehicleKwh: system.vehicle ? system.vehicle.storeKwh : 0,
  };
}

/** How full the battery is, 0..1; 0 without a battery. */
export function chargeShare(system: WalkSystem, stores: Stores): number {
  const cap = system.battery?.capKwh ?? 0;
  return cap > 0 ? stores.chargeKwh / cap : 0;
}
