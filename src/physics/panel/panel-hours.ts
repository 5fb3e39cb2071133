import { DAYS_PER_YEAR, MONTH_OF_DAY } from '../weather/calendar';
import { hourTemperatureC, type YearSpan } from '../weather/hourly-temperature';
import type { Weather } from '../weather/weather-years';
import { planeSunWh } from './plane-sun';
import type { PlaneYear } from './plane-year';

/** What lies between the sun on the plane and the inverter's input. */
export interface PanelTraits {
  albedo: number;
  noctC: number;
  powerPerKelvin: number;
  /** All constant losses together, 0 to 1: dirt, shade, wiring and the like. */
  lossShare: number;
  /** Share of each month's sun that snow keeps out, January first; none when left out. */
  snowLossByMonth?: readonly number[];
}

/**
 * Hourly direct-current energy of one kW of panels on a plane, kWh, after its losses and before
 * the inverter: 8,760 values a year in the order of the weather's days.
 */
export function panelHoursKwh(
  weather: Weather,
  plane: PlaneYear,
  traits: PanelTraits,
  span: YearSpan = {},
): Float32Array {
  const { firstYear = 0 } = span;
  const hours = planeSunWh(weather, plane, { ...span, albedo: traits.albedo });
  const kept = MONTH_OF_DAY.map(
    (m) => (1 - traits.lossShare) * (1 - (traits.snowLossByMonth?.[m] ?? 0)),
  );
  for (let i = 0; i < hours.length; i++) {
    const wattsPerM2 = hours[i]!;
    if (wattsPerM2 === 0) continue;
    const day = Math.floor(i / 24);
    hours[i] = kept[day % DAYS_PER_YEAR]! * rawKwh(weather, firstYear, day, i % 24, wattsPerM2);
  }
  return hours;

  function rawKwh(w: Weather, first: number, day: number, hour: number, wattsPerM2: number) {
    const d = first * DAYS_PER_YEAR + day;
    const airC = hourTemperatureC({ meanC: w.meanC[d]!, rangeK: w.rangeK[d]!, hour });
    const cellC = cellTemperatureC({ airC, wattsPerM2, noctC: traits.noctC });
    return panelWatts({ ratedWatts: 1, wattsPerM2, cellC, powerPerKelvin: traits.powerPerKelvin });
  }
}

/**
 * Temperature of a solar cell, C, from the air and the sun on its plane.
 *
 *     Tc = Ta + (NOCT - 20)/800 G
 *
 * `noctC` is the cell temperature at 800 W/m2 and 20 C air, about 45 on a rack or a vented roof.
 * No wind term. Source: Ross 1976, 12th IEEE PVSC, 1062-1067.
 */
export function cellTemperatureC(given: {
  airC: number;
  wattsPerM2: number;
  noctC: number;
}): number {
  return given.airC + ((given.noctC - 20) / 800) * given.wattsPerM2;
}

/**
 * Direct-current power of a panel, in the unit of `ratedWatts`, before any loss; never below zero.
 *
 *     Pdc = P0 (G/1000) [1 + gamma (Tc - 25)]
 *
 * `powerPerKelvin` is about -0.0035 for silicon. Source: Dobos 2014, NREL/TP-6A20-62641, section 8.
 */
export function panelWatts(given: {
  ratedWatts: number;
  wattsPerM2: number;
  cellC: number;
  powerPerKelvin: number;
}): number {
  const warm = 1 + given.powerPerKelvin * (given.cellC - 25);
  return Math.max(0, given.ratedWatts * (given.wattsPerM2 / 1000) * warm);
}

/**
 * Hourly alternating-current energy, kWh, from direct-current energy, through an inverter of
 * `ratedKw`: part-load efficiency and clipping, hour by hour. Writes over `dcKwh` when `into` is it.
 */
export function inverterHoursKwh(
  dcKwh: Float32Array,
  inverter: { ratedKw: number; ratedEfficiency: number; into?: Float32Array },
): Float32Array {
  const into = inverter.into ?? new Float32Array(dcKwh.length);
  const { ratedKw, ratedEfficiency } = inverter;
  for (let i = 0; i < dcKwh.length; i++) {
    // kWh in one hour is mean kW; the formula only needs power and rating in one unit.
    into[i] = inverterWatts({ dcWatts: dcKwh[i]!, ratedWatts: ratedKw, ratedEfficiency });
  }
  return into;
}

/** Efficiency at full load of the inverter whose measured curve the formula follows. */
const REFERENCE_EFFICIENCY = 0.9637;

/**
 * Alternating-current power of an inverter, W: its efficiency falls at light load and its output
 * stops at its rating (clipping). Zero below about 0.6 % of its rating, where it would only consume.
 *
 *     z = Pdc / (Pac0 / eta)     eta(z) = (eta/0.9637)(-0.0162 z - 0.0059/z + 0.9858)
 *
 * `ratedWatts` is the AC rating; a rating of zero gives zero. Source: Dobos 2014,
 * NREL/TP-6A20-62641, eq. 11 and 12.
 */
export function inverterWatts(given: {
  dcWatts: number;
  ratedWatts: number;
  ratedEfficiency: number;
}): number {
  const { dcWatts, ratedWatts, ratedEfficiency } = given;
  if (dcWatts <= 0 || ratedWatts <= 0) return 0;
  const z = (dcWatts * ratedEfficiency) / ratedWatts;
  const efficiency = (ratedEfficiency / REFERENCE_EFFICIENCY) * (-0.0162 * z - 0.0059 / z + 0.9858);
  return Math.min(Math.max(0, efficiency * dcWatts), ratedWatts);
}
