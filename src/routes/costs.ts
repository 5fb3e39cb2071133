import type { PartName } from '../bill/lifecycle/part-name';
import { type Figure, figure } from '../quantity/figure';
import { addFigures, operand, timesFigure, worked } from '../quantity/figure-arithmetic';
import { type EquipmentClass, equipmentCost } from '../tables/prices/equipment-costs';
import type { Part } from './route';

/** A part priced from the table: so many units of its class. */
export function part(equipmentClass: EquipmentClass, units = 1, called?: PartName): Part {
  const each = priceOf(equipmentClass);
  const usd = units === 1 ? each : timesFigure(each, unitsOf(equipmentClass, units));
  return priced({ called: called ?? { code: equipmentClass }, equipmentClass, units }, usd);
}

/** The price of one unit of a class, $, from the table. */
export function priceOf(equipmentClass: EquipmentClass): Figure {
  const row = equipmentCost(equipmentClass);
  const { low, likely: value, high } = row;
  return figure({
    low,
    value,
    high,
    unit: '$',
    name: nameOf(equipmentClass),
    source: rangeOf(row),
  });
}

const rangeOf = ({ year, source: cite }: ReturnType<typeof equipmentCost>) =>
  ({ kind: 'table', is: { code: 'price-range', year }, cite }) as const;

const nameOf = (equipmentClass: EquipmentClass) =>
  ({ code: 'equipment', class: equipmentClass }) as const;

function unitsOf(equipmentClass: EquipmentClass, units: number): Figure {
  const { unit } = equipmentCost(equipmentClass);
  return operand(units, unit === 'job' ? 'count' : unit, 'size-of-part');
}

/** How far a price may lie either way of that of its size, and the cheapest below the least of its class; our judgement. */
const EITHER_WAY = 0.25;
const BELOW_LEAST = 0.8;

/**
 * A part whose price grows with its size inside the range of its class: `share` 0 is the smallest of the class,
 * 1 the largest. The range is a quarter either way.
 */
export function partBySize(equipmentClass: EquipmentClass, share: number, called?: PartName): Part {
  const row = equipmentCost(equipmentClass);
  const at = Math.min(1, Math.max(0, share));
  const value = row.low + at * (row.high - row.low);
  const source = rangeOf(row);
  const usd: Figure = figure({
    low: Math.max(row.low * BELOW_LEAST, value * (1 - EITHER_WAY)),
    value,
    high: value * (1 + EITHER_WAY),
    unit: '$',
    source,
    as: () => {
      const least = operand(row.low, '$', 'least-of-class', source);
      const most = operand(row.high, '$', 'most-of-class', source);
      const apart = { unit: '$', is: 'between-least-and-most' } as const;
      const between = worked({ by: 'difference', of: [most, least] }, apart);
      const place = operand(at, 'count', 'place-in-class');
      return addFigures([least, timesFigure(between, place, { is: 'at-this-size' })], {
        unit: '$',
      });
    },
    endAs: (end) => {
      if (end === 'high') {
        return timesFigure(usd, operand(1 + EITHER_WAY, 'count', 'price-above'));
      }
      const least = operand(row.low, '$', 'least-of-class', source);
      const floor = timesFigure(least, operand(BELOW_LEAST, 'count', 'below-least'), {
        is: 'least-price',
      });
      const below = timesFigure(usd, operand(1 - EITHER_WAY, 'count', 'price-below'), {
        is: 'price-of-size-below',
      });
      return worked({ by: 'largest', of: [floor, below] }, { unit: '$' });
    },
  });
  return priced({ called: called ?? { code: equipmentClass }, equipmentClass, units: 1 }, usd);
}

/** Something the household has already, of a class whose upkeep it goes on paying. */
export function owned(called: PartName, equipmentClass: EquipmentClass, units = 1): Part {
  const source = { kind: 'told', is: 'there-already' } as const;
  const costUsd = figure({ value: 0, unit: '$', name: nameOf(equipmentClass), source });
  return { called, year: 0, costUsd, equipmentClass, units };
}

/** It is there already: nothing is paid and nobody waits for it. */
export const isOwned = ({ costUsd }: Part): boolean => costUsd.source.kind === 'told';

/** The sum of the parts, low ends together and high ends together. */
export function total(parts: readonly Part[]): Figure {
  return addFigures(
    parts.map((p) => p.costUsd),
    { unit: '$', is: 'route-cost' },
  );
}

function priced(given: Pick<Part, 'called' | 'equipmentClass' | 'units'>, usd: Figure): Part {
  const row = equipmentCost(given.equipmentClass);
  const costUsd = worked(
    { by: 'rounded', of: [usd], to: 10 },
    { unit: '$', name: nameOf(given.equipmentClass), source: rangeOf(row) },
  );
  return { ...given, year: row.year, costUsd };
}
