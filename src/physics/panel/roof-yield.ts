import { demandRange } from '../demand-range';
import { DAYS_PER_YEAR, MONTH_DAYS, MONTH_OF_DAY } from '../weather/calendar';
import { darkestRun } from '../weather/month-statistics';
import type { Weather } from '../weather/weather-years';
import { inverterHoursKwh, type PanelTraits, panelHoursKwh } from './panel-hours';
import { type ClockPlace, type Plane, planeYear } from './plane-year';

/** What one roof face gives, for one kW of panels unless `panelKw` says otherwise. */
export interface RoofYield {
  yearKwh: number;
  /** Least and most of the years. */
  worstYearKwh: number;
  bestYearKwh: number;
  /** Mean kWh a day, January first. */
  monthKwhPerDay: number[];
  /** Mean kWh a day over the darkest run of 1, 3, 7 and 14 days of each year, mean over years. */
  darkestRunKwhPerDay: { days: number; kwhPerDay: number }[];
}

export interface RoofYieldOf {
  weather: Weather;
  plane: Plane;
  clock: ClockPlace | null;
  traits: PanelTraits;
  panelKw: number;
  inverterKw: number;
  inverterEfficiency: number;
}

/**
 * Alternating-current energy of panels on one face over all synthetic years. Tilt is 0 to 90
 * degrees (RangeError outside). Without sun every figure is 0, never NaN.
 */
export function roofYield(given: RoofYieldOf): RoofYield {
  demandRange(given.plane.tiltDeg, { name: 'tilt', unit: 'degrees', min: 0, max: 90 });
  demandRange(given.panelKw, { name: 'panel power', unit: 'kW', min: 0, max: 1e6 });
  const plane = planeYear(given.weather.sky, given.plane, given.clock);
  const hours = panelHoursKwh(given.weather, plane, given.traits);
  for (let i = 0; i < hours.length; i++) hours[i] = hours[i]! * given.panelKw;
  inverterHoursKwh(hours, {
    ratedKw: given.inverterKw,
    ratedEfficiency: given.inverterEfficiency,
    into: hours,
  });
  return sumUp(dailySums(hours), given.weather.years);
}

function dailySums(hours: Float32Array): Float64Array {
  const days = new Float64Array(hours.length / 24);
  for (let i = 0; i < hours.length; i++) {
    const day = Math.floor(i / 24);
    days[day] = days[day]! + hours[i]!;
  }
  return days;
}

function sumUp(days: Float64Array, years: number): RoofYield {
  const byYear = Array.from({ length: years }, (_, y) =>
    days.subarray(y * DAYS_PER_YEAR, (y + 1) * DAYS_PER_YEAR),
  );
  const totals = byYear.map((year) => year.reduce((sum, kwh) => sum + kwh, 0));
  const months = new Array<number>(12).fill(0);
  days.forEach((kwh, i) => {
    months[MONTH_OF_DAY[i % DAYS_PER_YEAR]!]! += kwh;
  });
  return {
    yearKwh: totals.reduce((sum, kwh) => sum + kwh, 0) / years,
    worstYearKwh: Math.min(...totals),
    bestYearKwh: Math.max(...totals),
    monthKwhPerDay: months.map((kwh, m) => kwh / years / MONTH_DAYS[m]!),
    darkestRunKwhPerDay: [1, 3, 7, 14].map((length) => ({
      days: length,
      kwhPerDay: byYear.reduce((sum, year) => sum + darkestRun(year, length), 0) / years,
    })),
  };
}
