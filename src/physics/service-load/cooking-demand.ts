import { type CookingDemand, type NamedVa, sumVa } from './dwelling';

export interface CookingVa {
  readonly va: number;
  /** How it was reached, for the line's label. */
  readonly how: string;
}

const UNDER_VA = 3500;
const MID_VA = 8750;
const RANGE_VA = 12_000;
const MOST_VA = 27_000;

/**
 * Demand of household cooking by NEC Table 220.55, VA. One range: 8 kVA up to 12 kVA, and 5 % more for each kVA or major
 * part of one above 12 (note 1). One to three smaller units of one size class: the table's share of their sum, or column C
 * if that is less. Anything else is taken whole, which is never too low.
 */
export function cookingDemandVa(
  units: readonly NamedVa[],
  table: readonly CookingDemand[],
): CookingVa {
  if (units.length === 0) return { va: 0, how: 'none' };
  const sum = sumVa(units);
  const row = table.find((r) => r.units === units.length);
  const largest = Math.max(...units.map((u) => u.va));
  const smallest = Math.min(...units.map((u) => u.va));
  if (row && largest <= MID_VA && smallest >= UNDER_VA) return byShare(row.midShare, sum, row);
  if (row && largest < UNDER_VA) return byShare(row.underShare, sum, row);
  if (row && units.length === 1 && largest <= RANGE_VA) return { va: row.rangeVa, how: 'column C' };
  if (row && units.length === 1 && largest <= MOST_VA) {
    const kvaAbove = majorParts((largest - RANGE_VA) / 1000);
    return { va: row.rangeVa * (1 + 0.05 * kvaAbove), how: 'column C, note 1' };
  }
  return { va: sum, how: 'whole, outside the simple cases of the table' };
}

function byShare(share: number, sum: number, row: CookingDemand): CookingVa {
  const va = Math.min(share * sum, row.rangeVa);
  return { va, how: `${Math.round(share * 100)} % of ${sum} VA` };
}

/** Whole kVA with a half or more counted as one: a "major fraction" in the words of the code. */
const majorParts = (kva: number) => Math.floor(kva + 0.5);
