import { type DegreeDayFit, degreeDayFit } from '../../physics/degree-day-fit';
import { MONTH_DAYS } from '../../physics/weather/calendar';
import type { Cite } from '../../quantity/cite';
import type { Climate } from '../../tables/place/climate';
import type { Facts } from '../facts';
import type { Load } from '../home';
import { monthDegrees } from '../weather/usual-hours';
import { weatherKwh } from '../weather/weather-kwh';
import { LEAST_KWH } from './calibration';

/** Where the split of monthly bills comes from. */
export const DEGREE_DAY_CITE: Cite = [
  { of: 'degree-day-regression', ref: 'Fels 1986, PRISM, Energy and Buildings 9, 5-18' },
  { ref: 'ASHRAE Guideline 14-2014' },
];

/** Twelve months of a meter, January first, and what of them goes with the weather. */
export interface BillYear {
  readonly kwhPerDay: readonly number[];
  /** Null where nothing was used at all. */
  readonly fit: DegreeDayFit | null;
  readonly heating: WeatherPart;
  readonly cooling: WeatherPart;
}

/** Heating or cooling of a year, as the bills show it and as the answers count it. */
export interface WeatherPart {
  /** kWh a year. */
  readonly billedKwh: number;
  readonly countedKwh: number;
  /** A usual day of the month that has most of it, kWh. */
  readonly billedTop: number;
  readonly countedTop: number;
  /** What the months miss the whole fit by, kWh a day. */
  readonly misfitKwh: number;
}

/** The twelve bills, where they were told, split by the weather of the place; null where they were not. */
export function billYearOf(
  facts: Facts,
  loads: readonly Load[],
  climate: Climate,
): BillYear | null {
  const kwh = facts.told('bill-year-kwh') ? facts.numbers('bill-year-kwh') : null;
  if (kwh === null || kwh.length !== 12) return null;
  const degrees = monthDegrees(climate);
  const counted = weatherKwh(loads, climate);
  const heatingK = effectiveDegrees(degrees.heatingK, counted.heating);
  const coolingK = effectiveDegrees(degrees.coolingK, counted.cooling);
  const kwhPerDay = kwh.map((one, month) => one / MONTH_DAYS[month]!);
  const fit = degreeDayFit(
    MONTH_DAYS.map((days, m) => ({
      days,
      kwhPerDay: kwhPerDay[m]!,
      heatingK: heatingK[m]!,
      coolingK: coolingK[m]!,
    })),
  );
  const misfitKwh = ((fit?.cvRmse ?? 0) * yearSum(kwhPerDay)) / 365;
  const part = (slope: number | undefined, degrees: readonly number[], kwh: readonly number[]) => ({
    ...partOf(slope ?? 0, degrees, kwh),
    misfitKwh,
  });
  return {
    kwhPerDay,
    fit,
    heating: part(fit?.kwhPerHeatingK, heatingK, counted.heating),
    cooling: part(fit?.kwhPerCoolingK, coolingK, counted.cooling),
  };
}

/**
 * Degree days of the year shared over its months as this home's own heating or cooling is: a heat pump takes more for a
 * cold degree, and a warm afternoon is cooled though its day is mild. Without such a load, the degree days themselves.
 */
function effectiveDegrees(degrees: readonly number[], counted: readonly number[]): number[] {
  if (Math.max(...counted) < LEAST_KWH) return [...degrees];
  const all = yearSum(degrees);
  const share = all > 0 ? all / yearSum(counted) : 1;
  return counted.map((kwh) => kwh * share);
}

function partOf(
  slope: number,
  degrees: readonly number[],
  counted: readonly number[],
): Omit<WeatherPart, 'misfitKwh'> {
  return {
    billedKwh: slope * yearSum(degrees),
    countedKwh: yearSum(counted),
    billedTop: slope * Math.max(...degrees),
    countedTop: Math.max(...counted),
  };
}

function yearSum(perDay: readonly number[]): number {
  return perDay.reduce((sum, one, month) => sum + one * MONTH_DAYS[month]!, 0);
}
