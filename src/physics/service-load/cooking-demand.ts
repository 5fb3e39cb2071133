import { type CookingDemand, type NamedVa, sumVa } from './dwelling';
import type { CookingHow } from './line-is';

export interface CookingVa {
  readonly va: number;
  /** How it was reached. */
  readonly how: CookingHow;
}

/** Up to this an appliance is outside the table and counts whole, VA. */
const OUTSIDE_VA = 1750;
const UNDER_VA = 3500;
const MID_VA = 8750;
const RANGE_VA = 12_000;
const MOST_VA = 27_000;

/**
 * Demand of household cooking by NEC Table 220.55, VA. Up to 12 kVA each: column C by their number, or for units up to
 * 8.75 kVA the shares of columns A and B added, if that is less (note 3). Ranges above 12 kVA: column C and 5 % more for
 * each kVA or major part of one by which their average, none counted below 12, is above 12 (notes 1 and 2), with smaller
 * units beside them by their own columns. Units of 1.75 kVA or less, above 27 kVA, or more than the table holds: whole.
 */
export function cookingDemandVa(
  units: readonly NamedVa[],
  table: readonly CookingDemand[],
): CookingVa {
  if (units.length === 0) return { va: 0, how: { code: 'none' } };
  const outside = units.filter((u) => u.va <= OUTSIDE_VA || u.va > MOST_VA);
  const inside = units.filter((u) => !outside.includes(u));
  const table55 = insideDemand(inside, table);
  const whole = sumVa(outside);
  if (inside.length === 0) return { va: whole, how: { code: 'whole-outside', va: whole } };
  if (outside.length === 0) return table55;
  return {
    va: table55.va + whole,
    how: { code: 'and-whole', table: table55.how, va: whole },
  };
}

function insideDemand(units: readonly NamedVa[], table: readonly CookingDemand[]): CookingVa {
  const row = table.find((r) => r.units === units.length);
  if (!row) return { va: sumVa(units), how: { code: 'more-than-the-table' } };
  const small = units.filter((u) => u.va <= MID_VA);
  const ranges = units.filter((u) => u.va > MID_VA);
  if (ranges.some((u) => u.va > RANGE_VA)) {
    const large = aboveTwelve(ranges, table);
    return small.length === 0 ? large : both(large, byShares(small, table));
  }
  const columnC: CookingVa = {
    va: row.rangeVa,
    how: { code: 'column-c', units: row.units, notes: 0 },
  };
  if (ranges.length > 0) return columnC;
  const shares = byShares(small, table);
  return shares.va <= columnC.va ? shares : columnC;
}

/** Notes 1 and 2. */
function aboveTwelve(ranges: readonly NamedVa[], table: readonly CookingDemand[]): CookingVa {
  const row = table.find((r) => r.units === ranges.length)!;
  const average = sumVa(ranges.map((r) => ({ ...r, va: Math.max(RANGE_VA, r.va) }))) / row.units;
  const kvaAbove = majorParts((average - RANGE_VA) / 1000);
  const notes = row.units === 1 ? 1 : 2;
  return {
    va: row.rangeVa * (1 + 0.05 * kvaAbove),
    how: { code: 'column-c', units: row.units, notes },
  };
}

/** Note 3: each column's own number of units sets its share, and the two are added. */
function byShares(units: readonly NamedVa[], table: readonly CookingDemand[]): CookingVa {
  const under = units.filter((u) => u.va < UNDER_VA);
  const mid = units.filter((u) => u.va >= UNDER_VA);
  const columns = [
    { of: under, share: table.find((r) => r.units === under.length)?.underShare },
    { of: mid, share: table.find((r) => r.units === mid.length)?.midShare },
  ].filter(({ of }) => of.length > 0);
  return columns
    .map(({ of, share }): CookingVa => {
      const sum = sumVa(of);
      return { va: share! * sum, how: { code: 'share', share: share!, va: sum } };
    })
    .reduce(both);
}

const both = (a: CookingVa, b: CookingVa): CookingVa => ({
  va: a.va + b.va,
  how: { code: 'both', parts: [a.how, b.how] },
});

/** Whole kVA with a half or more counted as one: a "major fraction" in the words of the code. */
const majorParts = (kva: number) => Math.floor(kva + 0.5);
