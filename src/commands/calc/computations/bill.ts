import { billOfMonth } from '../../../bill/calculations';
import { demoTariffs } from '../../../bill/demo-tariffs';
import { paperBill } from '../../../bill/paper-bill';
import { citeTable } from '../../../tables/table';
import type { Calculation, Outcome } from '../calculation';
import { tariffIn, tariffInputs } from '../tariff-input';
import type { Values } from '../values';

/** One month's bill, line by line. */
export const bill: Calculation = {
  name: 'bill',
  about: "one month's electricity bill, line by line, for an ordinary home without solar",
  inputs: [
    ...tariffInputs,
    { kind: 'number', key: 'kwh', about: 'use in the month', unit: 'kWh', from: 0, to: 20_000 },
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
  ],
  source: `quantity times price, as on the bill; ${citeTable(demoTariffs)}`,
  example: 'tariff=flat price=16.5 fixed=12 kwh=899 month=4',
  run: billOf,
};

function billOf(values: Values): Outcome {
  const tariff = tariffIn(values);
  if (typeof tariff === 'string') return { ok: false, says: tariff };
  const { lines, total } = paperBill(
    billOfMonth({
      tariff,
      kwh: values.number('kwh'),
      month: values.number('month'),
      year: values.number('year'),
    }),
  );
  return {
    ok: true,
    steps: lines.map(({ label, quantity, unit, price, dollars }) => ({
      label,
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
    ],
  };
}
