import { type MeasureId, type MeasureRow, measureTable } from '../../tables/measures';
import type { Load } from '../home';
import { neverLessened } from '../loads/never-lessened';
import { changes } from './changes';
import type { Household } from './household';
import { closedBy } from './not-where';

/**
 * The loads with one measure taken. What somebody's health or the dryness of the house hangs on keeps its energy,
 * power and hours whatever a measure does; the same list where it may not be used here.
 */
export function withMeasure(household: Household, loads: readonly Load[], row: MeasureRow) {
  if (closedBy(household.facts, row.notWhere) !== null) return loads;
  return keepingSafe(loads, changes[row.id](household, loads, row));
}

/** Thrifty rows of the table, in their order. */
const thrifty = measureTable.rows.filter((row) => row.use === 'thrifty');

/** What costs nothing or little, and turns: each measure on what those before it left. */
export function thriftyLoads(household: Household, loads: readonly Load[]): readonly Load[] {
  return thrifty.reduce((left, row) => withMeasure(household, left, row), loads);
}

/** The same without one of its measures: what that one adds to the others. */
export function thriftyWithout(
  household: Household,
  loads: readonly Load[],
  id: MeasureId,
): readonly Load[] {
  const others = thrifty.filter((row) => row.id !== id);
  return others.reduce((left, row) => withMeasure(household, left, row), loads);
}

function keepingSafe(before: readonly Load[], after: readonly Load[]): readonly Load[] {
  if (after === before) return before;
  const kept = new Map(before.filter(neverLessened).map((load) => [load.id, load]));
  const all = after.map((load) => {
    const was = kept.get(load.id);
    if (was === undefined || was === load) return load;
    return load.dcFed === was.dcFed ? was : { ...was, dcFed: true as const };
  });
  const missing = [...kept.values()].filter((load) => all.every(({ id }) => id !== load.id));
  return [...missing, ...all];
}
