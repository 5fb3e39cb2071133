/**
 * A value for each hour, one after another. Many years of hours are kept in single precision: seven digits are more than
 * any figure of a house has, and half the memory.
 */
export type HourSeries = Float32Array | Float64Array;
