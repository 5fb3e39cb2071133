import heldFigures from '#compiled/climate-held.js';
import diffuse from '#compiled/tables/climate-diffuse.js';
import spread from '#compiled/tables/climate-spread.js';
import stations from '#compiled/tables/climate-stations.js';
import type { Table } from '../table';
import { type Climate, type ClimateRow, climateOfRow } from './climate-row';

export type { Climate } from './climate-row';

export interface Station {
  id: string;
  name: string;
  state: string;
  latDeg: number;
  lonDeg: number;
  elevationM: number;
  utcOffsetH: number;
  /** The published figures as they stand. */
  readonly climate: Climate;
  /** The same with odd months drawn in to what the stations around it say (see `build/held-figures.ts`). */
  readonly held: Climate;
}

/** The published monthly figures as they stand. */
export const climateStations: Table<ClimateRow> = stations;
export const climateDiffuse: Table<ClimateRow> = diffuse;
export const climateSpread: Table<ClimateRow> = spread;

let made: readonly Station[] | null = null;

/** Every station; made once, on first use, and each climate when it is first asked for. */
export function allStations(): readonly Station[] {
  made ??= climateStations.rows.map(toStation);
  return made;
}

function toStation(row: ClimateRow): Station {
  let climate: Climate | null = null;
  let held: Climate | null = null;
  const whole = () => ({
    ...row,
    ...rowOf(climateDiffuse, row.id),
    ...rowOf(climateSpread, row.id),
  });
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
      climate ??= climateOfRow(whole());
      return climate;
    },
    get held() {
      held ??= climateOfRow({ ...whole(), ...heldFigures[String(row.id)] });
      return held;
    },
  };
}

/** The three tables list the same stations, not in the same order. */
function rowOf(table: Table<ClimateRow>, id: ClimateRow[string] | undefined): ClimateRow {
  const row = table.rows.find((one) => one.id === id);
  if (row === undefined) throw new RangeError(`${table.name} has no station ${id}`);
  return row;
}
