/** What the weather generator needs to know of a place: twelve values, January first, of each. */
export interface MonthlyClimate {
  /** Mean daily sun on the level, kWh/m2. */
  ghiKwhPerM2Day: readonly number[];
  /** The part of it that comes from the whole sky and not the disc, kWh/m2. */
  diffuseKwhPerM2Day: readonly number[];
  /** Standard deviation of daily clearness within the month; null in polar night. */
  clearnessSpread: readonly (number | null)[];
  meanC: readonly number[];
  /** Mean daily range of temperature, K. */
  rangeK: readonly number[];
  /** Standard deviation of the daily mean temperature within one month of one year, K. */
  daySpreadK: readonly number[];
}

/** How days hang together; published figures, passed in from a table. */
export interface Persistence {
  /** Correlation of a day with the day before within months (see `lag1WithinMonths`): of clearness. */
  clearnessLag1: number;
  /** The same of daily mean temperature. */
  temperatureLag1: number;
  /** Correlation of a day's clearness with its mean temperature, by month. */
  clearnessTemperature: readonly number[];
}
