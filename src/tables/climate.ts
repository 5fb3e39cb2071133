import diffuse from '#compiled/tables/climate-diffuse.js';
import spread from '#compiled/tables/climate-spread.js';
import stations from '#compiled/tables/climate-stations.js';
import type { Table } from './table';

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

export interface Station {
  id: string;
  name: string;
  state: string;
  latDeg: number;
  lonDeg: number;
  elevationM: number;
  utcOffsetH: number;
  readonly climate: Climate;
}

type Row = Record<string, string | number | null>;

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** The published monthly figures as they stand. */
export const climateStations: Table<Row> = stations;
export const climateDiffuse: Table<Row> = diffuse;
export const climateSpread: Table<Row> = spread;

let made: readonly Station[] | null = null;

/** Every station; made once, on first use, and each climate when it is first asked for. */
export function allStations(): readonly Station[] {
  made ??= climateStations.rows.map(toStation);
  return made;
}

function toStation(row: Row): Station {
  let climate: Climate | null = null;
  return {
    id: String(row.id),
    name: String(row.name),
    state: String(row.state),
    latDeg: row.lat as number,
    lonDeg: row.lon as number,
    elevationM: row.elevation_m as number,
    utcOffsetH: row.utc_offset_h as number,
    // A place looks at every station but takes the climate of a few.
    get climate() {
      climate ??= toClimate({
        ...row,
        ...rowOf(climateDiffuse, row.id),
        ...rowOf(climateSpread, row.id),
      });
      return climate;
    },
  };
}

/** The three tables list the same stations, not in the same order. */
function rowOf(table: Table<Row>, id: Row[string] | undefined): Row {
  const row = table.rows.find((one) => one.id === id);
  if (row === undefined) throw new RangeError(`${table.name} has no station ${id}`);
  return row;
}

function toClimate(row: Row): Climate {
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
