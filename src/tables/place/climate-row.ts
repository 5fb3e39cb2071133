/** One station of the climate tables, as its columns are called there. */
export type ClimateRow = Record<string, string | number | null>;

/** Monthly weather of one place: twelve values, January first, of each series. */
export interface Climate {
  /** Mean daily sun on the level, kWh/m2. */
  ghiKwhPerM2Day: number[];
  /** The part of it that comes from the whole sky and not the disc, kWh/m2. */
  diffuseKwhPerM2Day: number[];
  /** Standard deviation of daily clearness within the month; null in polar night. */
  clearnessSpread: (number | null)[];
  meanC: number[];
  /** Mean daily range of temperature, K. */
  rangeK: number[];
  /** Standard deviation of the daily mean temperature within each month, K. */
  daySpreadK: number[];
  /** The same of December to February, and of June to August, K. */
  winterSpreadK: number;
  summerSpreadK: number;
  /** Correlation of a day with the day before, within months, of clearness and of mean temperature. */
  clearnessLag1: number;
  temperatureLag1: number;
  /** Temperature that 99 of 100 hours exceed, C. */
  heat99C: number;
  /** Temperature that 1 of 100 hours exceeds, C. */
  cool1C: number;
  heatingDegreeDays65F: number;
  coolingDegreeDays65F: number;
}

/** Endings of the monthly columns. */
export const MONTHS = [
  'jan',
  'feb',
  'mar',
  'apr',
  'may',
  'jun',
  'jul',
  'aug',
  'sep',
  'oct',
  'nov',
  'dec',
];

/** The climate that a row of the three tables together tells. */
export function climateOfRow(row: ClimateRow): Climate {
  const number = (name: string) => row[name] as number;
  const months = (of: string) => MONTHS.map((m) => row[`${of}_${m}`] as number);
  return {
    ghiKwhPerM2Day: months('ghi'),
    diffuseKwhPerM2Day: months('dhi'),
    clearnessSpread: months('ktsd'),
    meanC: months('tmean'),
    rangeK: months('trange'),
    daySpreadK: months('tsd'),
    winterSpreadK: number('tsd_winter'),
    summerSpreadK: number('tsd_summer'),
    clearnessLag1: number('clearness_lag1'),
    temperatureLag1: number('temperature_lag1'),
    heat99C: number('heat99_c'),
    cool1C: number('cool1_c'),
    heatingDegreeDays65F: number('hdd65f'),
    coolingDegreeDays65F: number('cdd65f'),
  };
}
