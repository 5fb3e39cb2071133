import towns from '#compiled/tables/station-towns.js';
import type { Table } from '../table';

export interface StationTownRow {
  /** Number of the station, as in the climate tables. */
  id: number;
  /** Town, base, island or pass, spelled out. */
  town: string;
  /** Taken from the station's own name, or written by hand. */
  standing: 'name' | 'memory';
  /** A ZIP code of the town as a number, to check the station's position against; null where it has none. */
  zip: number | null;
}

/** Where each weather station stands, in words. */
export const stationTowns: Table<StationTownRow> = towns;

let made: ReadonlyMap<string, string> | null = null;

/** Town of a station by its number. Throws RangeError for a station the table does not hold. */
export function stationTown(id: string): string {
  made ??= new Map(stationTowns.rows.map((row) => [String(row.id), row.town]));
  const town = made.get(id);
  if (town === undefined) throw new RangeError(`${stationTowns.name} has no station ${id}`);
  return town;
}
