import type { BillDay } from './bill-days';
import { type BillCarry, billMonth, type MonthBill, noCarry } from './bill-month';
import type { PeakFactors } from './peak-factors';
import type { Tariff } from './tariff';
import { type TariffHours, tariffHours } from './tariff-hours';

export interface BillInput {
  readonly tariff: Tariff;
  /** The days billed; each calendar month among them is one bill. */
  readonly days: readonly BillDay[];
  /** kWh an hour through the meter, 24 for each day. */
  readonly importKwh: ArrayLike<number>;
  readonly exportKwh: ArrayLike<number>;
  readonly peakFactors?: PeakFactors;
  /** The tariff already laid out on these days, to save doing it again. */
  readonly layout?: TariffHours;
}

export interface YearBill {
  readonly months: readonly MonthBill[];
  /** $ over all the days, credit still carried at the end not counted. */
  readonly total: number;
  readonly importKwh: number;
  readonly exportKwh: number;
  readonly carry: BillCarry;
}

/** Bills of consecutive months, credit and ratchet carried from one to the next. Throws RangeError on a wrong length. */
export function billYear(input: BillInput): YearBill {
  const { tariff, days, importKwh, exportKwh, peakFactors } = input;
  const hours = days.length * 24;
  if (importKwh.length !== hours || exportKwh.length !== hours) {
    throw new RangeError(
      `${importKwh.length} and ${exportKwh.length} hours for ${hours} hours of days`,
    );
  }
  const layout = input.layout ?? tariffHours(tariff, days);
  const months: MonthBill[] = [];
  let carry = noCarry;
  for (const { from, to } of monthSpans(layout)) {
    const bill = billMonth(tariff, { layout, from, to, importKwh, exportKwh, peakFactors }, carry);
    months.push(bill);
    carry = bill.carry;
  }
  const sum = (key: 'total' | 'importKwh' | 'exportKwh') => months.reduce((s, m) => s + m[key], 0);
  return {
    months,
    total: sum('total'),
    importKwh: sum('importKwh'),
    exportKwh: sum('exportKwh'),
    carry,
  };
}

/** First hour, and hour after the last, of each run of hours in one month. */
export function monthSpans(layout: { hours: number; monthOf: ArrayLike<number> }) {
  const spans: { from: number; to: number }[] = [];
  let from = 0;
  for (let h = 1; h <= layout.hours; h++) {
    if (h < layout.hours && layout.monthOf[h] === layout.monthOf[from]) continue;
    spans.push({ from, to: h });
    from = h;
  }
  return spans;
}
