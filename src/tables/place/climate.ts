import heldFigures from '#compiled/climate-held.js';
import diffuse from '#compiled/tables/climate-diffuse.js';
import spread from '#compiled/tables/climate-spread.js';
import stations from '#compiled/tables/climate-stations.js';
import { type LinesTable, rowAt } from '../lines-table';
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
export const climateStations: LinesTable = stations;

let made: readonly Station[] | null = null;

/** Every station; made once, on first use, and each climate when it is first asked for. */
export function allStations(): readonly Station[] {
  made ??= climateStations.lines.map(toStation);
  return made;
}

function toStation(line: string, at: number): Station {
  let climate: Climate | null = null;
  let held: Climate | null = null;
  const row = Object.fromEntries(
    line.split('\t', PLACE.length).map((text, i) => [PLACE[i]!, text]),
  ) as Record<(typeof PLACE)[number], string>;
  const whole = () => ({
    ...rowAt(climateStations, at),
    ...rowOf(diffuse, row.id),
    ...rowOf(spread, row.id),
  });
  return {
    id: row.id,
    name: row.name,
    state: row.state,
    latDeg: Number(row.lat),
    lonDeg: Number(row.lon),
    elevationM: Number(row.elevation_m),
    utcOffsetH: Number(row.utc_offset_h),
    // A place looks at every station but takes the climate of a few.
    get climate() {
      climate ??= climateOfRow(whole());
      return climate;
    },
    get held() {
      held ??= climateOfRow({ ...whole(), ...heldOf(row.id) });
      return held;
    },
  };
}

/** What stands before the monthly columns. */
const PLACE = ['id', 'name', 'state', 'lat', 'lon', 'elevation_m', 'utc_offset_h'] as const;

/** Odd months of a station, drawn in; none where all stand as published. */
function heldOf(id: string): ClimateRow {
  const text = heldFigures[id];
  return text === undefined ? {} : (JSON.parse(text) as ClimateRow);
}

const places = new WeakMap<LinesTable, ReadonlyMap<string, number>>();

/** The three tables list the same stations, not in the same order. */
function rowOf(table: LinesTable, id: string): ClimateRow {
  const byId = places.get(table) ?? placesOf(table);
  places.set(table, byId);
  const at = byId.get(id);
  if (at === undefined) throw new RangeError(`${table.name} has no station ${id}`);
  return rowAt(table, at);
}

/** Each line begins with its station. */
const placesOf = ({ lines }: LinesTable): ReadonlyMap<string, number> =>
  new Map(lines.map((line, at) => [line.slice(0, line.indexOf('\t')), at]));
