import {
  type EquipmentClass,
  equipmentCost,
  priceAgeYears,
} from '../../tables/prices/equipment-costs';
import type { Noise } from '../../tables/prices/noise';
import type { MoneyRange } from './money-range';
import type { PartName } from './part-name';

/** One thing bought or done, with what it costs over the years. */
export interface CostPart {
  readonly equipmentClass: EquipmentClass;
  readonly called: PartName;
  readonly cost: MoneyRange;
  readonly upkeepPerYear: MoneyRange;
  /** Years until it is bought again; null when it does not wear. */
  readonly lifeYears: number | null;
  /** Year of the price, and whether it is the household's own quote. */
  readonly priceYear: number;
  readonly quoted: boolean;
  /** Can be taken along to the next home. */
  readonly movesHouse: boolean;
  readonly leadWeeks: { readonly low: number; readonly high: number };
  readonly noise: Noise;
}

/** A household's own price for a part, $ in all, of the year it was given. */
export interface Quote {
  readonly dollars: number;
  readonly year: number;
}

/** So many units of a class, at the table's range or at the household's own quote. */
export function costPart(given: {
  equipmentClass: EquipmentClass;
  units?: number;
  quote?: Quote | null;
}): CostPart {
  const row = equipmentCost(given.equipmentClass);
  const { units = 1, quote = null } = given;
  if (!(units >= 0)) throw new RangeError(`${units} units of ${given.equipmentClass}`);
  const times = (low: number, likely: number, high: number) => ({
    low: low * units,
    likely: likely * units,
    high: high * units,
  });
  return {
    equipmentClass: given.equipmentClass,
    called: { code: given.equipmentClass },
    cost: quote
      ? { low: quote.dollars, likely: quote.dollars, high: quote.dollars }
      : times(row.low, row.likely, row.high),
    upkeepPerYear: times(row.upkeepLow, row.upkeepLikely, row.upkeepHigh),
    lifeYears: row.lifeLikely === 0 ? null : row.lifeLikely,
    priceYear: quote?.year ?? row.year,
    quoted: quote !== null,
    movesHouse: row.movesHouse,
    leadWeeks: { low: row.leadWeeksLow, high: row.leadWeeksHigh },
    noise: row.noise,
  };
}

/** A price that has to be asked for again. */
export interface OldPrice {
  readonly called: PartName;
  readonly year: number;
  readonly ageYears: number;
  /** The household's own quote, not a range of the table. */
  readonly quoted: boolean;
}

/** Prices more than two years older than `asOf` (YYYY-MM-DD). */
export function oldPrices(parts: readonly CostPart[], asOf: string): OldPrice[] {
  return parts.flatMap(({ called, priceYear: year, quoted }) => {
    const ageYears = priceAgeYears({ year }, asOf);
    return ageYears <= 2 ? [] : [{ called, year, ageYears, quoted }];
  });
}
