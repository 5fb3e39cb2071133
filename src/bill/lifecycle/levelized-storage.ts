import { singlePresentValue } from './factors';

export interface StorageLife {
  /** Installed cost, $. */
  readonly capital: number;
  readonly usableKwh: number;
  /** Share of the usable kWh cycled, 0 to 1. */
  readonly depth: number;
  readonly cyclesPerYear: number;
  readonly roundTripEfficiency: number;
  /** Loss of capacity a year, a fraction. */
  readonly fadePerYear: number;
  readonly upkeepPerYear: number;
  /** $/kWh bought to charge. */
  readonly chargePrice: number;
  readonly years: number;
  readonly rate: number;
}

/**
 * Levelized cost of storage, $ per kWh discharged: discounted capital, upkeep and charging over discounted kWh out.
 * LCOS = (I + sum (O + p E_t / eta) (1+d)^-t) / sum E_t (1+d)^-t, E_t = kWh x depth x cycles x (1 - fade)^(t-1).
 * The kWh are those that come out, not those put in. A number to compare with, not a saving. Null with no cycles.
 */
export function levelizedStorageCost(life: StorageLife): number | null {
  let cost = life.capital;
  let out = 0;
  for (let t = 1; t <= life.years; t++) {
    const worth = singlePresentValue({ rate: life.rate, years: t });
    const kwh =
      life.usableKwh * life.depth * life.cyclesPerYear * (1 - life.fadePerYear) ** (t - 1);
    cost += (life.upkeepPerYear + (life.chargePrice * kwh) / life.roundTripEfficiency) * worth;
    out += kwh * worth;
  }
  return out > 0 ? cost / out : null;
}

/** Years a battery lasts: its calendar life, or its throughput over what is cycled a year, whichever is shorter. */
export function batteryLifeYears(given: {
  calendarYears: number;
  /** kWh the warranty lets through in all; null when there is no such limit. */
  throughputKwh: number | null;
  kwhPerYear: number;
}): number {
  if (given.throughputKwh === null || given.kwhPerYear <= 0) return given.calendarYears;
  return Math.min(given.calendarYears, given.throughputKwh / given.kwhPerYear);
}
