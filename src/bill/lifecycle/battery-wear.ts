import { practice } from '../../tables/practice-figures';

/** New cells, $ a kWh of battery. */
const NEW_CELLS_PER_KWH = practice('new-cells-per-kwh');

/** kWh given for each kWh of battery before a warranty ends by use. */
export const KWH_THROUGH = practice('warranty-kwh-through');

/**
 * Wear of a kWh given, $: what the rule holds against each kWh before it lets the battery work. It decides only when
 * the battery works. It is no cost of its own: the life below holds it.
 */
export const WEAR_PER_KWH = NEW_CELLS_PER_KWH / KWH_THROUGH;

/** Years a battery lasts that works for the bill: by age or by use, whichever is up first. */
export interface WorkedLife {
  readonly years: number;
  readonly byUse: boolean;
}

/**
 * life = min(life by age, KWH_THROUGH x nameplate / kWh given a year)
 * So what a battery wears by working is counted once, as an earlier replacement, and not at all where age comes first.
 */
export function workedLife(of: {
  lifeYears: number;
  nameplateKwh: number;
  kwhOutPerYear: number;
}): WorkedLife {
  const { lifeYears, nameplateKwh, kwhOutPerYear } = of;
  if (!(kwhOutPerYear > 0)) return { years: lifeYears, byUse: false };
  const byUse = (KWH_THROUGH * nameplateKwh) / kwhOutPerYear;
  return byUse < lifeYears ? { years: byUse, byUse: true } : { years: lifeYears, byUse: false };
}
