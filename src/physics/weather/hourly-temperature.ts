import { DAYS_PER_YEAR } from './calendar';
import type { Weather } from './weather-years';

/**
 * Share of the daily range by which each hour, ending 1 to 24 o'clock, stays below the day's maximum.
 * Source: ASHRAE Handbook of Fundamentals 2021, chapter 14, Table 6.
 */
export const DAILY_RANGE_FRACTION = [
  0.88, 0.92, 0.95, 0.98, 1, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13, 0.05, 0, 0, 0.06, 0.14, 0.24,
  0.39, 0.5, 0.59, 0.68, 0.75, 0.82,
] as const;

const MEAN_FRACTION = DAILY_RANGE_FRACTION.reduce<number>((sum, share) => sum + share, 0) / 24;

/**
 * Outdoor temperature of the hour ending at `hour` + 1 (`hour` 0 to 23), C, from the day's mean and
 * range: T = mean + (mean fraction - fraction of the hour) x range.
 */
export function hourTemperatureC(day: { meanC: number; rangeK: number; hour: number }): number {
  return day.meanC + (MEAN_FRACTION - DAILY_RANGE_FRACTION[day.hour]!) * day.rangeK;
}

/** Which years to fill and, to reuse memory, where; the array must hold 8,760 values a year. */
export interface YearSpan {
  firstYear?: number;
  years?: number;
  into?: Float32Array;
}

/** Hourly outdoor temperature, C, 8,760 values a year, local standard time. */
export function hourlyTemperatureC(weather: Weather, span: YearSpan = {}): Float32Array {
  const { firstYear = 0, years = weather.years - firstYear } = span;
  const into = span.into ?? new Float32Array(years * DAYS_PER_YEAR * 24);
  const offset = DAILY_RANGE_FRACTION.map((share) => MEAN_FRACTION - share);
  const first = firstYear * DAYS_PER_YEAR;
  for (let day = 0; day < years * DAYS_PER_YEAR; day++) {
    const mean = weather.meanC[first + day]!;
    const range = weather.rangeK[first + day]!;
    for (let h = 0; h < 24; h++) into[day * 24 + h] = mean + offset[h]! * range;
  }
  return into;
}
