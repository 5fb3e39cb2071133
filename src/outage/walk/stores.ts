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
    fuel: system.generator ? system.generator.fuelAtStart : 0,
    vehicleKwh: system.vehicle ? system.vehicle.storeKwh : 0,
  };
}

/** The battery is below this share of its usable energy. Without a battery, or with an empty one of no size: yes. */
export function isBelow(system: WalkSystem, stores: Stores, share: number): boolean {
  const cap = system.battery?.capKwh ?? 0;
  return cap > 0 ? stores.chargeKwh < share * cap : share > 0;
}

/**
 * What is left of the store the household watches, 0 to 1: the battery's charge, else what the vehicle may give,
 * else the fuel. 1 where nothing runs down, as with piped gas.
 */
export function storeShare({ battery, vehicle, generator }: WalkSystem, stores: Stores): number {
  if (battery) return battery.capKwh > 0 ? stores.chargeKwh / battery.capKwh : 0;
  if (vehicle) return vehicle.storeKwh > 0 ? stores.vehicleKwh / vehicle.storeKwh : 0;
  const full = generator?.fuelAtStart ?? Infinity;
  if (!Number.isFinite(full)) return 1;
  return full > 0 ? stores.fuel / full : 0;
}

/** One hour on its way through the sources; one object for a whole walk, so that no hour allocates. */
export interface Hour {
  hourOfDay: number;
  mayCharge: boolean;
  /** Still wanted, kW; below zero: left over for the battery. */
  deficitKw: number;
  /** Given by the vehicle so far, kWh. */
  vehicleKwh: number;
  /** Not served because the store ran out, kWh at the house. */
  emptyKwh: number;
  /** Not served because the inverter gives no more, kWh at the house. */
  overKwh: number;
}
