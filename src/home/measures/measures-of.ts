import { type Figure, figure } from '../../quantity/figure';
import { addFigures } from '../../quantity/figure-arithmetic';
import {
  type MeasureId,
  type MeasureRow,
  type MeasureUse,
  measureTable,
  type NotWhere,
} from '../../tables/measures';
import type { Home, Load } from '../home';
import type { LoadId } from '../loads/load-id';
import { apartStarts } from './apart-starts';
import { oneRoomCounted } from './one-room-counted';
import { type Saves, savesOf } from './saves';
import { thriftyLoads, thriftyWithout, withMeasure } from './thrifty-loads';
import { gallonsToStore } from './water';

/** A way for this home to need less, in codes and figures. */
export interface Measure {
  readonly id: MeasureId;
  /** `counted`: the household told it already, and every sum knows it. */
  readonly use: MeasureUse | 'counted';
  /** What it takes off alone, from the home as usual; beside the other measures where it does nothing alone. */
  readonly saves: Saves;
  /** The loads that change or go. */
  readonly loads: readonly LoadId[];
  /** Those of them that need no power at all with it. */
  readonly ends: readonly LoadId[];
  /** What it costs, $ of the table's year. */
  readonly costUsd: Figure;
  readonly who: MeasureRow['who'];
  /** Where it may not be used; none of these holds here. */
  readonly notWhere: readonly NotWhere[];
  /** Water to store, gal; null for any other measure. */
  readonly gallons: number | null;
  /** The room is set to, F; null for any other measure. */
  readonly setF: number | null;
}

const made = new WeakMap<Home, readonly Measure[]>();

/**
 * Every measure with an effect on this home, in the order of the table; one that may not be used here is left out. Made once for
 * each home.
 */
export function measuresOf(home: Home): readonly Measure[] {
  const known = made.get(home) ?? measuresHere(home);
  made.set(home, known);
  return known;
}

const nothing = { loads: [], ends: [] } as const;

function measuresHere(home: Home): Measure[] {
  return measureTable.rows.flatMap((row) => measureHere(home, row) ?? []);
}

/** One row of the table; null where it has no effect here. */
function measureHere(home: Home, row: MeasureRow): Measure | null {
  const counted = countedAlready(home, row.id);
  if (counted !== null) return measure(home, row, { use: 'counted', saves: counted, ...nothing });
  if (row.id === 'start-order') {
    const saves = apartStarts(home.loads, home.goalSeasons);
    return saves === null ? null : measure(home, row, { use: row.use, saves, ...nothing });
  }
  const after = withMeasure(home, home.loads, row);
  if (after === home.loads) return null;
  const saves = savesOf(home, home.loads, after) ?? savesBesideOthers(home, row);
  if (saves === null) return null;
  const loads = changedLoads(home.loads, after);
  const ends = loads.filter((id) => !after.some((load) => load.id === id));
  return measure(home, row, { use: row.use, saves, loads, ends });
}

/** What the thrifty way costs, $, as `thriftySum` says: only what has a price is looked at. */
export function thriftyCost(home: Home): Figure {
  const known =
    costs.get(home) ?? costOf(pricedThrift.flatMap((row) => measureHere(home, row) ?? []));
  costs.set(home, known);
  return known;
}

const costs = new WeakMap<Home, Figure>();
const pricedThrift = measureTable.rows.filter((row) => row.use === 'thrifty' && row.high > 0);

/**
 * What the thrifty way takes off in all, and what it costs, $: of its measures those that take something off what must run, for no lantern
 * is needed to carry a laptop. Nothing where none has an effect.
 */
export function thriftySum(home: Home, measures: readonly Measure[]) {
  return {
    saves: savesOf(home, home.loads, thriftyLoads(home, home.loads)),
    costUsd: costOf(measures),
  };
}

function costOf(measures: readonly Measure[]): Figure {
  const taken = measures.filter(({ use, saves }) => use === 'thrifty' && saves.of === 'must');
  return addFigures(
    taken.map(({ costUsd }) => costUsd).filter(({ high }) => high > 0),
    { unit: '$', source: { kind: 'formula', is: 'sum-of-measures' } },
  );
}

/** Some do nothing alone: a pack's inverter rests only once all else is off in those hours. */
function savesBesideOthers(home: Home, { id, use }: MeasureRow): Saves | null {
  if (use !== 'thrifty') return null;
  return savesOf(home, thriftyWithout(home, home.loads, id), thriftyLoads(home, home.loads));
}

function countedAlready(home: Home, id: MeasureId): Saves | null {
  if (id === 'one-room') return oneRoomCounted(home, 'winter');
  return id === 'room-unit' ? oneRoomCounted(home, 'summer') : null;
}

function measure(
  home: Home,
  row: MeasureRow,
  given: Pick<Measure, 'use' | 'saves' | 'loads' | 'ends'>,
): Measure {
  const gallons = row.each === 'gallon' ? gallonsToStore(home, row) : null;
  const units = row.each === 'person' ? Math.max(1, home.people.value) : (gallons ?? 1);
  const year = measureTable.source.year!;
  return {
    id: row.id,
    ...given,
    costUsd: figure({
      low: Math.round(units * row.low),
      value: Math.round(units * row.likely),
      high: Math.round(units * row.high),
      unit: '$',
      is: { code: 'measure', id: row.id },
      source: { kind: 'table', is: { code: 'prices', year }, cite: row.source },
    }),
    who: row.who,
    notWhere: row.notWhere,
    gallons,
    setF: row.setF ?? null,
  };
}

/** Ids of the loads that a list no longer holds as they were. */
function changedLoads(before: readonly Load[], after: readonly Load[]): LoadId[] {
  const now = new Map(after.map((load) => [load.id, load]));
  return before.filter((load) => now.get(load.id) !== load).map((load) => load.id);
}
