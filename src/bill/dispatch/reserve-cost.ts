import {
  type DispatchYearInput,
  dispatchYear,
  keptInstead,
  type Strategy,
  settingOfYear,
} from './dispatch-year';

export interface ReserveLevel {
  /** Share of the battery kept for outages all year, 0 to 1. */
  readonly share: number;
  readonly keptKwh: number;
  /** $ a year off the bill, wear taken off. */
  readonly savings: number;
  /** $ a year given up against keeping nothing. */
  readonly cost: number;
  readonly chosen: boolean;
}

/**
 * What it costs to keep charge for outages: the year's savings at several reserve levels, by the same rule. The
 * household's own choice is added as a level if it is not one of them, and marked.
 */
export function reserveCost(
  input: Omit<DispatchYearInput, 'floorKwhByMonth'>,
  given: {
    readonly strategy: Strategy;
    readonly shares?: readonly number[];
    readonly chosen: number;
  },
): ReserveLevel[] {
  const { shares = [0, 0.2, 0.4, 0.6, 0.8], chosen } = given;
  const levels = [...new Set([0, ...shares, chosen])].sort((a, b) => a - b);
  const keptAt = (kwh: number): number[] => Array(12).fill(kwh);
  const open = settingOfYear({ ...input, floorKwhByMonth: keptAt(0) });
  let fullSavings = 0;
  return levels.map((share) => {
    if (!(share >= 0 && share <= 1)) throw new RangeError(`a reserve of ${share} is not 0 to 1`);
    const keptKwh = share * input.battery.usableKwh;
    const year = dispatchYear(keptInstead(open, keptAt(keptKwh)), given.strategy);
    const savings = year.savings - year.wear;
    if (share === 0) fullSavings = savings;
    return { share, keptKwh, savings, cost: fullSavings - savings, chosen: share === chosen };
  });
}
