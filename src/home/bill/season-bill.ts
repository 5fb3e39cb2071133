import { type Figure, figure } from '../../quantity/figure';
import type { Origin } from '../../quantity/origin';
import type { Climate } from '../../tables/place/climate';
import type { Season } from '../home';
import type { BillYear } from './bill-year';

/** What twelve bills show for a season, kWh a day: the coldest month, the hottest, or April and October together. */
export function seasonBill(billYear: BillYear, climate: Climate, season: Season): Figure {
  const months = billMonths(climate, season);
  const kwh = months.reduce((sum, month) => sum + billYear.kwhPerDay[month]!, 0) / months.length;
  return billFigure(kwh, { code: 'bills-of', months });
}

/** The months whose bills stand for a season, January 0. */
export function billMonths({ meanC }: Climate, season: Season): readonly number[] {
  return {
    winter: [meanC.indexOf(Math.min(...meanC))],
    summer: [meanC.indexOf(Math.max(...meanC))],
    mild: [3, 9],
  }[season];
}

/** Use on a bill, kWh a day. */
export function billFigure(value: number, is: Origin): Figure {
  const source = { kind: 'told', is } as const;
  return figure({ value, unit: 'kWh/day', is: 'use-on-bill', source });
}
