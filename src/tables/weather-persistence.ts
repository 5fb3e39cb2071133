import correlation from '#compiled/tables/clearness-temperature.js';
import persistence from '#compiled/tables/weather-persistence.js';
import type { Table } from './table';

/** Day-to-day persistence of clearness and of temperature. */
export const weatherPersistence: Table<{ of: 'clearness' | 'temperature'; lag1: number }> =
  persistence;

/** Correlation of a day's clearness with its mean temperature, January first. */
export const clearnessTemperature: Table<{ month: number; correlation: number }> = correlation;

/** The figures of both tables in the form the weather generator takes. */
export function persistenceFigures() {
  const lag1 = (of: 'clearness' | 'temperature') =>
    weatherPersistence.rows.find((row) => row.of === of)!.lag1;
  return {
    clearnessLag1: lag1('clearness'),
    temperatureLag1: lag1('temperature'),
    clearnessTemperature: clearnessTemperature.rows.map((row) => row.correlation),
  };
}
