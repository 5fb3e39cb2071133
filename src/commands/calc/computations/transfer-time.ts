import { ridesThrough, rideThroughSeconds } from '../../../physics/ride-through';
import { iticCurve } from '../../../tables/itic-curve';
import type { Calculation, Outcome } from '../calculation';
import { citedTables } from '../cited-table';
import { percentInput } from '../percent-input';
import type { Values } from '../values';

/** Whether office electronics stay on through a transfer or a sag. */
export const transferTime: Calculation = {
  name: 'transfer-time',
  about: 'whether office electronics stay on through the time a transfer takes, or a sag',
  inputs: [
    {
      kind: 'number',
      key: 'time',
      about: 'how long there is no voltage, or less',
      unit: 'ms',
      from: 0,
      to: 600_000,
    },
    percentInput({ key: 'voltage', about: 'what is left of it', from: 0, to: 200, assumed: 0 }),
  ],
  source: citedTables(iticCurve),
  example: 'time=20 ms',
  run: stayOn,
};

function stayOn(values: Values): Outcome {
  const percentOfNominal = values.number('voltage');
  const seconds = values.number('time') / 1000;
  const allowed = rideThroughSeconds(percentOfNominal, iticCurve.rows);
  const rides = ridesThrough({ percentOfNominal, seconds }, iticCurve.rows);
  const formula = `the curve at ${percentOfNominal}% of nominal`;
  return {
    ok: true,
    steps:
      allowed === null ? [] : [{ label: 'allowed', formula, value: 1000 * allowed, unit: 'ms' }],
    results: [
      { label: 'office electronics built to the curve', value: rides ? 'stay on' : 'may drop out' },
      ...(allowed === null ? [{ label: 'allowed', value: 'without end' }] : []),
    ],
    notes: ['A design target for office equipment. It says nothing about medical devices.'],
  };
}
