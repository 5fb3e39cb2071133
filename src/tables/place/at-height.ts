import type { Climate } from './climate';

/** Fall of temperature with height, K per m. International standard atmosphere (ISO 2533). */
const LAPSE_K_PER_M = 0.0065;
const BASE_C = (65 - 32) / 1.8;
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * A climate moved `higherM` meters up (negative: down): temperatures fall by 6.5 K a kilometre and
 * degree days change by what the monthly means lose or gain. Sun and scatter stay as they are.
 */
export function atHeight(climate: Climate, higherM: number): Climate {
  const colder = higherM * LAPSE_K_PER_M;
  const meanC = climate.meanC.map((c) => c - colder);
  const heat = monthlyDegreeDays(meanC, 1) - monthlyDegreeDays(climate.meanC, 1);
  const cool = monthlyDegreeDays(meanC, -1) - monthlyDegreeDays(climate.meanC, -1);
  return {
    ...climate,
    meanC,
    heat99C: climate.heat99C - colder,
    cool1C: climate.cool1C - colder,
    heatingDegreeDays65F: Math.max(0, climate.heatingDegreeDays65F + heat),
    coolingDegreeDays65F: Math.max(0, climate.coolingDegreeDays65F + cool),
  };
}

/** Degree days F of the monthly means alone: `side` 1 for heating, -1 for cooling. */
function monthlyDegreeDays(meanC: readonly number[], side: 1 | -1): number {
  return meanC.reduce(
    (sum, c, m) => sum + Math.max(0, side * (BASE_C - c)) * 1.8 * MONTH_DAYS[m]!,
    0,
  );
}
