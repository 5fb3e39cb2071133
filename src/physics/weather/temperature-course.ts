import { DAYS_PER_YEAR, MONTH_OF_DAY } from './calendar';
import { monthCurve, monthMean } from './month-curve';
import type { MonthlyClimate } from './monthly-climate';

/** What is usual for each day of the year: mean temperature, and how far days stray from it. */
export interface TemperatureCourse {
  usualC: Float64Array;
  strayK: Float64Array;
}

/** Share of the winter spread in each month's; the rest is summer's. Our judgement between seasons. */
const WINTER_SHARE = [1, 1, 2 / 3, 1 / 2, 1 / 3, 0, 0, 0, 1 / 3, 1 / 2, 2 / 3, 1];

/**
 * The usual course of daily mean temperature and the spread of days about it. The published seasonal
 * spread is about one mean for three months, so the part that is only the course itself is taken out.
 */
export function temperatureCourse(climate: MonthlyClimate): TemperatureCourse {
  const usualC = monthCurve(climate.meanC);
  const winter = strayOnly(climate.winterSpreadK, usualC, [11, 0, 1]);
  const summer = strayOnly(climate.summerSpreadK, usualC, [5, 6, 7]);
  const strayK = new Float64Array(DAYS_PER_YEAR);
  for (let day = 0; day < DAYS_PER_YEAR; day++) {
    const share = WINTER_SHARE[MONTH_OF_DAY[day]!]!;
    strayK[day] = share * winter + (1 - share) * summer;
  }
  return { usualC, strayK };
}

function strayOnly(spreadK: number, usualC: Float64Array, months: readonly number[]): number {
  const mean = months.reduce((sum, m) => sum + monthMean(usualC, m), 0) / months.length;
  const squares = usualC.map((c) => (c - mean) ** 2);
  const drift = months.reduce((sum, m) => sum + monthMean(squares, m), 0) / months.length;
  return Math.sqrt(Math.max(spreadK ** 2 - drift, spreadK ** 2 / 4));
}
