import type { CostPart } from './cost-part';
import type { PartName } from './part-name';

export interface Stage {
  /** Dollars this stage brings the total to, at the likely prices; null for all that comes later. */
  readonly upTo: number | null;
  readonly parts: readonly CostPart[];
  readonly dollars: number;
}

/**
 * The parts of a route, in the order given, bought as the money comes: the first 100 dollars, the first 1,000, the
 * rest. A part goes to the first stage whose limit still holds it, and never before a part named earlier.
 */
export function stagedBuying(parts: readonly CostPart[], limits = [100, 1000]): Stage[] {
  const ends: (number | null)[] = [...limits, null];
  const stages = ends.map(() => [] as CostPart[]);
  let at = 0;
  let spent = 0;
  for (const part of parts) {
    spent += part.cost.likely;
    while (ends[at] !== null && spent > ends[at]!) at++;
    stages[at]!.push(part);
  }
  return stages.map((bought, i) => ({
    upTo: ends[i]!,
    parts: bought,
    dollars: bought.reduce((sum, part) => sum + part.cost.likely, 0),
  }));
}

/** What of an earlier stage is still of use: what moves house, and of what stays with the house. */
export interface CarriesOver {
  readonly moves: readonly PartName[];
  readonly stays: readonly PartName[];
}

export function carriesOver(parts: readonly CostPart[]): CarriesOver {
  const names = (moves: boolean) =>
    parts.filter((p) => p.movesHouse === moves).map((p) => p.called);
  return { moves: names(true), stays: names(false) };
}
