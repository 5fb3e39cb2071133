import { billOfDays } from '../../../bill/calculations';
import { type BillDay, daysBetween, monthDays } from '../../../bill/tariff/bill-days';
import { demoTariffs } from '../../../bill/tariff/demo-tariffs';
import { paperBill } from '../../../bill/tariff/paper-bill';
import { hidesPeak } from '../../../bill/tariff/peak-factors';
import { sayBillLine } from '../../../words/en/money/say-bill-line';
import type { Calculation, Input, Outcome } from '../calculation';
import { citedTables } from '../cited-table';
import { tariffIn, tariffInputs } from '../tariff-input';
import type { Values } from '../values';

const date = (key: 'from' | 'to', about: string): Input => ({
  kind: 'text',
  key,
  about,
  pattern: /^\d{4}-\d{2}-\d{2}$/,
  form: 'a day such as 2026-06-17',
  optional: true,
});

/** One bill of a month or of any days, line by line. */
export const bill: Calculation = {
  name: 'bill',
  about: 'one electricity bill, line by line, for an ordinary home without solar',
  inputs: [
    ...tariffInputs,
    { kind: 'number', key: 'kwh', about: 'use in those days', unit: 'kWh', from: 0, to: 20_000 },
    {
      kind: 'number',
      key: 'month',
      about: '1 January to 12 December',
      unit: 'count',
      from: 1,
      to: 12,
      whole: true,
      assumed: 1,
    },
    date('from', 'first day of the bill, in place of month and year'),
    date('to', 'last day of the bill, counted too'),
    {
      kind: 'number',
      key: 'peak',
      about: 'highest use as the bill or the meter shows it, for a demand charge',
      unit: 'kW',
      from: 0,
      to: 200,
      optional: true,
    },
  ],
  source: `quantity times price, as on the bill; ${citedTables(demoTariffs)}`,
  example: 'tariff=flat price=16.5 fixed=12 kwh=899 month=4',
  run: billOf,
};

function billOf(values: Values): Outcome {
  const tariff = tariffIn(values);
  if (typeof tariff === 'string') return { ok: false, says: tariff };
  const days = daysOf(values);
  if (typeof days === 'string') return { ok: false, says: days };
  const meteredKw = values.numberOrNull('peak');
  const { lines, total } = paperBill(
    billOfDays({ tariff, kwh: values.number('kwh'), days, meteredKw }),
  );
  const hidden = meteredKw === null && (tariff.demand ?? []).some(hidesPeak);
  return {
    ok: true,
    steps: lines.map(({ is, quantity, unit, price, dollars }) => ({
      label: sayBillLine(is),
      formula:
        quantity === null || price === null
          ? 'by the tariff'
          : `${Number(quantity.toFixed(2))} ${unit} x $${Number(price.toFixed(5))}`,
      value: dollars,
      unit: '$',
    })),
    results: [{ label: 'total', value: total, unit: '$' }],
    notes: [
      'Spread over the hours as an ordinary home uses them. Each line is in whole cents, as on paper.',
      ...(hidden
        ? [
            'The peak of the demand charge cannot be told from hours: the highest hour is counted, and the real peak may be higher. Give it with peak=.',
          ]
        : []),
    ],
  };
}

/** A bill covers this many days at most: two months and some, as where every second month is billed. */
const MOST_DAYS = 100;

function daysOf(values: Values): readonly BillDay[] | string {
  const [from, to] = [values.wordOrNull('from'), values.wordOrNull('to')];
  if (from === null && to === null) {
    return monthDays(values.number('year'), values.number('month'));
  }
  if (from === null || to === null) return 'a bill needs both days, from and to.';
  const days = daysBetween(from, to);
  if (days === null)
    return `from ${from} to ${to}: these are no days in order, such as 2026-06-17 and 2026-07-16.`;
  return days.length > MOST_DAYS
    ? `from and to hold ${days.length} days, more than one bill: give at most ${MOST_DAYS}.`
    : days;
}
