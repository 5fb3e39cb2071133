import { type BillYear, DEGREE_DAY_CITE } from '../home/bill/bill-year';
import { MONTH_DAYS } from '../physics/weather/calendar';
import { type Figure, figure } from '../quantity/figure';
import { formula } from '../quantity/figure-arithmetic';

/** Twelve bills and what they split into, for the plan file; null where they were not told or show no use. */
export function billYearFigures({ kwhPerDay, fit, heating, cooling }: BillYear) {
  if (fit === null) return null;
  const source = formula('bills-fit', [], DEGREE_DAY_CITE);
  const of = (value: number, unit: string): Figure => figure({ value, unit, source });
  return {
    monthsKwh: kwhPerDay.map((kwh, month) => kwh * MONTH_DAYS[month]!),
    anyWeather: of(fit.baseKwhPerDay, 'kWh/day'),
    withCold: of(heating.billedKwh, 'kWh/year'),
    withHeat: of(cooling.billedKwh, 'kWh/year'),
    misfit: of(fit.cvRmse, 'CV(RMSE)'),
    explained: of(fit.r2, 'r2'),
  };
}
