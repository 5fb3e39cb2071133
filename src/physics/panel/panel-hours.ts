import { DAYS_PER_YEAR, MONTH_OF_DAY } from '../weather/calendar';
import { hourTemperatureC, type YearSpan } from '../weather/hourly-temperature';
import type { Weather } from '../weather/weather-years';
import { cellTemperatureC } from './cell-temperature';
import { inverterWatts } from './inverter-watts';
import { panelWatts } from './panel-watts';
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
