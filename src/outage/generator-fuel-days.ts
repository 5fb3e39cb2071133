import { type FuelLine, fuelPerHour } from '../physics/generator-fuel';
import { requireWithin } from '../quantity/require-within';
import { requireDayProfile } from './day-profile';

export interface GeneratorFuelDaysInput {
  readonly loadWattsByHour: ArrayLike<number>;
  /** The generator's continuous output at the site, after altitude and heat. */
  readonly ratedKw: number;
  readonly fuelLine: FuelLine;
  /** Fuel at hand that can be burned, in the fuel line's unit. `null`: piped, no end foreseen. */
  readonly usableFuel: number | null;
  /** 1 where the generator runs, by hour of the day. Without it: all 24 hours. */
  readonly runsByHour?: ArrayLike<number>;
}

export interface GeneratorFuelDays {
  readonly fuelPerDay: number;
  /** Days of this day the fuel covers; `null` when fuel is piped or the generator never runs. */
  readonly days: number | null;
  readonly runHoursPerDay: number;
  readonly servedKwhPerDay: number;
  /** Wanted while the generator is off, or beyond its rating while it runs. */
  readonly unservedKwhPerDay: number;
  readonly overloadedHoursPerDay: number;
  /** Served energy for a unit of fuel; `null` when nothing burns. */
  readonly kwhPerUnit: number | null;
}

/**
 * Fuel a day and days of fuel for a generator that carries the load itself, hour by hour:
 * no-load burn in every hour it runs, plus the slope of the fuel line times what it delivers.
 */
export function generatorFuelDays(input: GeneratorFuelDaysInput): GeneratorFuelDays {
  const { loadWattsByHour, ratedKw, fuelLine, usableFuel, runsByHour } = input;
  requireDayProfile('loadWattsByHour', loadWattsByHour);
  requireWithin('ratedKw', ratedKw, { atLeast: 0, unit: 'kW' });
  if (usableFuel !== null) requireWithin('usableFuel', usableFuel, { atLeast: 0, unit: 'units' });
  let fuelPerDay = 0;
  let runHoursPerDay = 0;
  let servedKwhPerDay = 0;
  let unservedKwhPerDay = 0;
  let overloadedHoursPerDay = 0;
  for (let hour = 0; hour < 24; hour++) {
    const wantedKw = loadWattsByHour[hour]! / 1000;
    const runs = ratedKw > 0 && (runsByHour === undefined || runsByHour[hour]! > 0);
    const outputKw = runs ? Math.min(wantedKw, ratedKw) : 0;
    servedKwhPerDay += outputKw;
    unservedKwhPerDay += wantedKw - outputKw;
    if (!runs) continue;
    runHoursPerDay += 1;
    fuelPerDay += fuelPerHour(fuelLine, outputKw);
    if (wantedKw > ratedKw) overloadedHoursPerDay += 1;
  }
  const burns = fuelPerDay > 0;
  return {
    fuelPerDay,
    days: usableFuel !== null && burns ? usableFuel / fuelPerDay : null,
    runHoursPerDay,
    servedKwhPerDay,
    unservedKwhPerDay,
    overloadedHoursPerDay,
    kwhPerUnit: burns ? servedKwhPerDay / fuelPerDay : null,
  };
}
