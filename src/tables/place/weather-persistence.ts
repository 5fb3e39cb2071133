import correlation from '#compiled/tables/clearness-temperature.js';
import type { Table } from '../table';
import type { Climate } from './climate';

/** Correlation of a day's clearness with its mean temperature, January first. */
export const clearnessTemperature: Table<{ month: number; correlation: number }> = correlation;

/** How days hang together at a place, in the form the weather generator takes. */
export function persistenceFigures({ clearnessLag1, temperatureLag1 }: Climate) {
  return {
    clearnessLag1,
    temperatureLag1,
    clearnessTemperature: clearnessTemperature.rows.map((row) => row.correlation),
  };
}
