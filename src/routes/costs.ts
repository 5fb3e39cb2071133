import { type Figure, figure } from '../quantity/figure';
import { addFigures } from '../quantity/figure-arithmetic';
import { type EquipmentClass, equipmentCost } from '../tables/equipment-costs';
import type { Part } from './route';

/** A part priced from the table: so many units of its class. */
export function part(equipmentClass: EquipmentClass, units = 1, name?: string): Part {
  const row = equipmentCost(equipmentClass);
  const ends = { low: row.low * units, value: row.likely * units, high: row.high * units };
  return priced({ name: name ?? row.name, equipmentClass, units }, ends);
}

/**
 * A part whose price grows with its size inside the range of its class: `share` 0 is the smallest of the class,
 * 1 the largest. The range is a quarter either way.
 */
export function partBySize(equipmentClass: EquipmentClass, share: number, name?: string): Part {
  const row = equipmentCost(equipmentClass);
  const at = Math.min(1, Math.max(0, share));
  const value = row.low + at * (row.high - row.low);
  const ends = { low: Math.max(row.low * 0.8, value * 0.75), value, high: value * 1.25 };
  return priced({ name: name ?? row.name, equipmentClass, units: 1 }, ends);
}

/** Something the household has already, of a class whose upkeep it goes on paying. */
export function owned(name: string, equipmentClass: EquipmentClass, units = 1): Part {
  const source = { kind: 'told', label: 'you have it already' } as const;
  const costUsd = figure({ value: 0, unit: '$', name, source });
  return { name, year: 0, costUsd, equipmentClass, units };
}

/** It is there already: nothing is paid and nobody waits for it. */
export const isOwned = ({ costUsd }: Part): boolean => costUsd.source.kind === 'told';

/** The sum of the parts, low ends together and high ends together. */
export function total(parts: readonly Part[]): Figure {
  return addFigures(
    parts.map((p) => p.costUsd),
    { unit: '$', name: 'cost of the route' },
  );
}

function priced(
  of: Pick<Part, 'name' | 'equipmentClass' | 'units'>,
  ends: { low: number; value: number; high: number },
): Part {
  const { year, source: cite } = equipmentCost(of.equipmentClass);
  const round = (usd: number) => Math.round(usd / 10) * 10;
  const costUsd = figure({
    low: round(ends.low),
    value: round(ends.value),
    high: round(ends.high),
    unit: '$',
    name: of.name,
    source: { kind: 'table', label: `price range of ${year}`, cite },
  });
  return { ...of, year, costUsd };
}
