/**
 * A value for each hour, one after another. Many years of hours are kept in single precision: seven digits are more than
 * any figure of a house has, and half the memory.
 */
export type HourSeries = Float32Array | Float64Array;

/** True where both show the same place in memory. */
export function sameSeries(a: HourSeries, b: HourSeries): boolean {
  return a.buffer === b.buffer && a.byteOffset === b.byteOffset && a.length === b.length;
}

/** The largest of these hours; 0 where there is none above. */
export function largestOf(hours: HourSeries): number {
  let most = 0;
  for (let i = 0; i < hours.length; i++) if (hours[i]! > most) most = hours[i]!;
  return most;
}
