import { type DegreeDayFit, degreeDayFit } from '../physics/degree-day-fit';
import { MONTH_DAYS } from '../physics/weather/calendar';
import type { Climate } from '../tables/climate';
import type { Facts } from './facts';
import { monthDegrees } from './usual-hours';

/** Where the split of monthly bills comes from. */
export const DEGREE_DAY_CITE =
  'degree-day regression of monthly bills: Fels 1986, PRISM, Energy and Buildings 9, 5-18; ASHRAE Guideline 14-2014';

/** Twelve months of a meter, January first, and what of them goes with the weather. */
export interface BillYear {
  readonly kwhPerDay: readonly number[];
  /** Null where nothing was used at all. */
  readonly fit: DegreeDayFit | null;
  /** kWh a year that go with cold and with heat, by the fit. */
  readonly heatingKwh: number;
  readonly coolingKwh: number;
}

/** The twelve bills, where they were told, split by the degree days of the place; null where they were not. */
export function billYearOf(facts: Facts, climate: Climate): BillYear | null {
  const kwh = facts.told('bill-year-kwh') ? facts.numbers('bill-year-kwh') : null;
  if (kwh === null || kwh.length !== 12) return null;
  return splitYear(kwh, climate);
}

/** Split twelve months of kWh by the usual degree days of a climate, base 65 F. */
export function splitYear(kwh: readonly number[], climate: Climate): BillYear {
  const { heatingK, coolingK } = monthDegrees(climate);
  const kwhPerDay = kwh.map((one, month) => one / MONTH_DAYS[month]!);
  const fit = degreeDayFit(
    MONTH_DAYS.map((days, m) => ({
      days,
      kwhPerDay: kwhPerDay[m]!,
      heatingK: heatingK[m]!,
      coolingK: coolingK[m]!,
    })),
  );
  const year = (degrees: readonly number[]) =>
    degrees.reduce((sum, degree, month) => sum + degree * MONTH_DAYS[month]!, 0);
  return {
    kwhPerDay,
    fit,
    heatingKwh: (fit?.kwhPerHeatingK ?? 0) * year(heatingK),
    coolingKwh: (fit?.kwhPerCoolingK ?? 0) * year(coolingK),
  };
}
