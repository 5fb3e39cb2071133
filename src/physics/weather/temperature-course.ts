import { DAYS_PER_YEAR, MONTH_DAYS, MONTH_OF_DAY, MONTH_START } from './calendar';
import { endlessLag1, varianceWithinMonths } from './lag1';
import { monthCurve, monthMean } from './month-curve';
import type { MonthlyClimate } from './monthly-climate';

/** What is usual for each day of the year: mean temperature, and how far days stray from it over many years. */
export interface TemperatureCourse {
  usualC: Float64Array;
  strayK: Float64Array;
}

/** A month's days stray at least by this share of their own spread, however steep its course. */
const LEAST_STRAY_SHARE = 0.5;

/**
 * The usual course of daily mean temperature and how far days stray about it. The published spread is that of the days of
 * one month of one year about their own mean. The course of the season inside that month is part of it and is taken out;
 * that the whole month was cold or mild is not part of it and is put back, by how strongly days lean on the day before.
 */
export function temperatureCourse(
  climate: Pick<MonthlyClimate, 'meanC' | 'daySpreadK'>,
  lag1WithinMonths: number,
): TemperatureCourse {
  const usualC = monthCurve(climate.meanC);
  const kept = varianceWithinMonths(endlessLag1(lag1WithinMonths));
  const byMonth = climate.daySpreadK.map((spreadK, m) =>
    Math.sqrt(strayVariance(spreadK, courseVariance(usualC, m)) / kept),
  );
  const strayK = new Float64Array(DAYS_PER_YEAR);
  for (let day = 0; day < DAYS_PER_YEAR; day++) strayK[day] = byMonth[MONTH_OF_DAY[day]!]!;
  return { usualC, strayK };
}

function strayVariance(spreadK: number, course: number): number {
  return Math.max(spreadK ** 2 - course, (LEAST_STRAY_SHARE * spreadK) ** 2);
}

/** Variance of the course alone over the days of month `m`, K2. */
function courseVariance(usualC: Float64Array, m: number): number {
  const mean = monthMean(usualC, m);
  let squares = 0;
  for (let d = 0; d < MONTH_DAYS[m]!; d++) squares += (usualC[MONTH_START[m]! + d]! - mean) ** 2;
  return squares / MONTH_DAYS[m]!;
}
