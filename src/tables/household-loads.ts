import loads, { type RowId } from '#compiled/tables/household-loads.js';
import type { Cite } from '../quantity/cite';
import type { Table } from './table';

/** Low, likely, high. */
export type Triple = readonly [low: number, likely: number, high: number];
export type Season = 'winter' | 'mild' | 'summer';

/** Id of a row of the table. */
export type HouseholdLoadId = RowId;

export interface HouseholdLoadRow {
  id: HouseholdLoadId;
  /** Set where the figures are for one ton, or one bank, and must be multiplied. */
  per?: string;
  hp?: number;
  volts: 120 | 240;
  runningWatts: Triple;
  startingVa: Triple;
  /** Likely power factor while running. */
  powerFactor: number;
  /** Hours a day at the running watts: one triple for the year, or winter, mild, summer. */
  hours?: readonly Triple[];
  /** kWh a day where the load cycles by itself: one triple, or winter, mild, summer. */
  kwh?: readonly Triple[];
  motor: boolean;
  /** Starts without anyone touching it, so it can start while something else does. */
  selfStarting: boolean;
  /** It fills a battery of its own, so that nothing stops while its source is switched off. */
  ownBattery?: true;
  /** A household does without it for the time of an outage, or the same by hand, and nobody is harmed. */
  otherwise?: true;
  /** Id of a row of the load shapes. */
  shape: string;
  /** A plausible range only: never plan on it, ask the supplier. */
  confirmWithSupplier?: true;
  standing: 'published' | 'practice' | 'memory' | 'judgement';
  source: Cite;
}

/** What common loads draw when no label can be read, one row a load. */
export const householdLoads: Table<HouseholdLoadRow> = loads;

/** The row of a load; throws RangeError for an id that is not in the table. */
export function householdLoad(id: HouseholdLoadId): HouseholdLoadRow {
  const row = householdLoads.rows.find((r) => r.id === id);
  if (!row) throw new RangeError(`no household load called ${id}`);
  return row;
}

/**
 * kWh in a day of that season: the row's own kWh, or watts times hours.
 * The low end takes low watts and low hours together, the high end both high.
 */
export function dailyKwh(row: HouseholdLoadRow, season: Season): Triple {
  if (row.kwh) return ofSeason(row.kwh, season);
  const [low, likely, high] = dailyHours(row, season);
  const watts = row.runningWatts;
  return [(watts[0] * low) / 1000, (watts[1] * likely) / 1000, (watts[2] * high) / 1000];
}

/** Hours a day at the running watts; for a row in kWh, its kWh over its running kW. */
export function dailyHours(row: HouseholdLoadRow, season: Season): Triple {
  if (row.hours) return ofSeason(row.hours, season);
  const kwh = ofSeason(row.kwh!, season);
  const kw = row.runningWatts[1] / 1000;
  return [Math.min(24, kwh[0] / kw), Math.min(24, kwh[1] / kw), Math.min(24, kwh[2] / kw)];
}

function ofSeason(triples: readonly Triple[], season: Season): Triple {
  const at = triples.length === 1 ? 0 : ['winter', 'mild', 'summer'].indexOf(season);
  return triples[at]!;
}
