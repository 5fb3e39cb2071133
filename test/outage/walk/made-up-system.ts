import type {
  WalkGenerator,
  WalkRecord,
  WalkSystem,
  WalkVehicle,
} from '../../../src/outage/walk/system';
import { seeded } from '../plain-walk';

export const limits = {
  chargeKw: 3,
  dischargeKw: 5,
  chargeEfficiency: 0.92,
  dischargeEfficiency: 0.92,
  idleKw: 0.04,
};

export const always = new Uint8Array(24).fill(1);
export const between = (from: number, to: number) =>
  Uint8Array.from({ length: 24 }, (_, h) => (h >= from && h < to ? 1 : 0));

export const generator: WalkGenerator = {
  ratedKw: 4,
  fuelLine: { noLoadPerHour: 0.25, perKwh: 0.11 },
  runsByHour: between(6, 10),
  fuelAtStart: 10,
  refill: 0,
  refillEveryHours: Infinity,
  tankSize: 10,
};

export const vehicle: WalkVehicle = {
  storeKwh: 30,
  outKw: 1.8,
  efficiency: 0.85,
  idleKw: 0,
  homeByHour: Uint8Array.from({ length: 24 }, (_, h) => (h >= 18 || h < 8 ? 1 : 0)),
  helpBelow: 0.5,
};

export const batteryOnly = (capKwh: number): WalkSystem => ({
  battery: { capKwh, limits },
  generator: null,
  vehicle: null,
  ladder: [],
});

/** A made-up home: two load classes and sun, darker in winter. */
export function madeUpRecord(
  days: number,
  seed: number,
  sunKw: number,
  loadKw: number,
): WalkRecord {
  const random = seeded(seed);
  const hours = 24 * days;
  const solarKw = new Float64Array(hours);
  const must = new Float64Array(hours);
  const good = new Float64Array(hours);
  let clear = 0.5;
  for (let t = 0; t < hours; t++) {
    const hour = t % 24;
    const summer = 0.65 - 0.35 * Math.cos((2 * Math.PI * t) / 8760);
    if (hour === 0) clear = 0.3 * clear + 0.7 * random();
    const day = Math.max(0, Math.sin(((hour - 7) * Math.PI) / 10));
    solarKw[t] = sunKw * clear * day * summer;
    must[t] = loadKw * (0.5 + random());
    good[t] = hour >= 17 && hour < 22 ? loadKw * random() : 0;
  }
  return { loadsKw: [must, good], solarKw };
}
