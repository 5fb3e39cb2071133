/** What the weather generator needs to know of a place: twelve values, January first, of each. */
export interface MonthlyClimate {
  /** Mean daily sun on the level, kWh/m2. */
  ghiKwhPerM2Day: readonly number[];
  /** Standard deviation of daily clearness within the month; null in polar night. */
  clearnessSpread: readonly (number | null)[];
  meanC: readonly number[];
  /** Mean daily range of temperature, K. */
  rangeK: readonly number[];
  /** Standard deviation of the daily mean temperature, December to February, K. */
  winterSpreadK: number;
  /** The same, June to August. */
  summerSpreadK: number;
}

/** How days hang together; published figures, passed in from a table. */
export interface Persistence {
  /** Day-to-day persistence of the Gaussian behind clearness. */
  clearnessLag1: number;
  /** Day-to-day persistence of the departure of daily mean temperature. */
  temperatureLag1: number;
  /** Correlation of a day's clearness with its mean temperature, by month. */
  clearnessTemperature: readonly number[];
}
