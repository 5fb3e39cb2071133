import type { Hour, Stores } from './stores';
import type { WalkBattery, WalkGenerator } from './system';

/**
 * One hour of the generator: it carries the deficit and fills the battery as fast as the charger takes it,
 * up to its rating. With too little fuel for the whole hour it runs a part of it. Takes what it gives
 * from the hour's deficit and what it burns from the fuel.
 */
export function generatorHour(
  generator: WalkGenerator,
  battery: WalkBattery | null,
  stores: Stores,
  hour: Hour,
): void {
  if (generator.runsByHour[hour.hourOfDay] === 0 || stores.fuel <= 0) return;
  const charging = battery ? chargingKw(battery, stores.chargeKwh, hour.mayCharge) : 0;
  const wantedKw = Math.max(0, hour.deficitKw + charging);
  const outputKw = Math.min(generator.ratedKw, wantedKw);
  const burned = generator.fuelLine.noLoadPerHour + generator.fuelLine.perKwh * outputKw;
  const share = burned > stores.fuel ? stores.fuel / burned : 1;
  stores.fuel = share < 1 ? 0 : stores.fuel - burned;
  hour.deficitKw -= outputKw * share;
}

/**
 * Power the charger would take to be full at the end of the hour, within its limit, kW. Where the cells may take no
 * charge it still carries the inverter's own draw, as the sun does.
 */
function chargingKw(battery: WalkBattery, chargeKwh: number, mayCharge: boolean): number {
  const { chargeKw, chargeEfficiency, idleKw } = battery.limits;
  const roomKwh = mayCharge ? battery.capKwh - chargeKwh : 0;
  return Math.min(chargeKw, (roomKwh + idleKw) / chargeEfficiency);
}

/** Put a refill into the tank; never beyond its size, and never takes fuel out. */
export function refill(generator: WalkGenerator, stores: Stores): void {
  stores.fuel = Math.max(stores.fuel, Math.min(generator.tankSize, stores.fuel + generator.refill));
}
