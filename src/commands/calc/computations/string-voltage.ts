import { coldFactor, mostLabelVolts, rowAmps, rowVolts } from '../../../physics/panel/row-in-cold';
import { panelColdFactor, panelColdFactors } from '../../../tables/electrical/panel-cold-factor';
import type { Calculation, Outcome, Result, Step } from '../calculation';
import { citedTables } from '../cited-table';
import type { Values } from '../values';

const percent = '%/K';

/** Voltage of solar panels in a row on the coldest morning, and currents of rows side by side. */
export const stringVoltage: Calculation = {
  name: 'string-voltage',
  about: 'volts and amps of solar panels in a row in the cold, against what the input takes',
  inputs: [
    {
      kind: 'number',
      key: 'in-row',
      about: 'panels one after another',
      unit: 'count',
      from: 1,
      to: 50,
      whole: true,
    },
    {
      kind: 'number',
      key: 'voc',
      about: 'open-circuit volts of a panel',
      unit: 'V',
      from: 1,
      to: 200,
    },
    {
      kind: 'number',
      key: 'lowest',
      about: 'record low of the place',
      unit: 'C',
      from: -65,
      to: 40,
    },
    {
      kind: 'number',
      key: 'coefficient',
      about:
        'change of those volts with temperature, negative, from the data sheet; without it the table of the code',
      unit: percent,
      from: -1,
      to: -0.05,
      optional: true,
    },
    {
      kind: 'number',
      key: 'limit',
      about: 'volts that the input takes',
      unit: 'V',
      from: 5,
      to: 1500,
      optional: true,
    },
    {
      kind: 'number',
      key: 'isc',
      about: 'short-circuit amps of a panel',
      unit: 'A',
      from: 0.1,
      to: 30,
      optional: true,
    },
    {
      kind: 'number',
      key: 'rows',
      about: 'rows side by side',
      unit: 'count',
      from: 1,
      to: 20,
      whole: true,
      assumed: 1,
    },
    {
      kind: 'number',
      key: 'amps-limit',
      about: 'amps that the input takes',
      unit: 'A',
      from: 1,
      to: 500,
      optional: true,
    },
  ],
  source: `National Electrical Code, 690.7 and 690.8; ${citedTables(panelColdFactors)}`,
  example: 'in-row=3 voc=22.6 lowest="-18 C" coefficient=-0.28 limit=60',
  run: voltageOf,
};

function voltageOf(values: Values): Outcome {
  const [inRow, openCircuitVolts] = [values.number('in-row'), values.number('voc')];
  const lowestC = values.number('lowest');
  const percentPerK = values.numberOrNull('coefficient');
  const factor =
    percentPerK === null ? panelColdFactor(lowestC) : coldFactor({ lowestC, percentPerK });
  const volts = rowVolts({ inRow, openCircuitVolts, factor });
  const currents = currentsOf(values);
  return {
    ok: true,
    steps: [
      {
        label: 'cold factor',
        formula:
          percentPerK === null ? 'Table 690.7(A)' : '1 + coefficient / 100 x (lowest - 25 C)',
        value: factor,
        unit: 'times',
      },
      { label: 'row', formula: 'in-row x voc x cold factor', value: volts, unit: 'V' },
      ...currents.steps,
    ],
    results: [
      { label: 'highest voltage of the row', value: volts, unit: 'V' },
      ...limitResults(values, { inRow, factor, volts }),
      ...currents.results,
    ],
    notes: [
      'The coldest bright morning counts, not the usual one. On a house of one or two families the code allows 600 V at most (690.7).',
      'What the maker prints on the input and on the panel decides.',
    ],
  };
}

function limitResults(
  values: Values,
  given: { inRow: number; factor: number; volts: number },
): Result[] {
  const limitVolts = values.numberOrNull('limit');
  if (limitVolts === null) return [];
  const fits = given.volts <= limitVolts;
  return [
    {
      label: 'against the limit',
      value: fits ? 'not more than the input takes' : 'too much: do not connect it',
    },
    {
      label: 'largest voc a panel may show',
      value: mostLabelVolts({ ...given, limitVolts }),
      unit: 'V',
    },
  ];
}

function currentsOf(values: Values): { steps: Step[]; results: Result[] } {
  const shortCircuitAmps = values.numberOrNull('isc');
  if (shortCircuitAmps === null) return { steps: [], results: [] };
  const { inputAmps, wireAmps } = rowAmps({ rows: values.number('rows'), shortCircuitAmps });
  const limit = values.numberOrNull('amps-limit');
  return {
    steps: [{ label: 'current', formula: '1.25 x rows x isc', value: inputAmps, unit: 'A' }],
    results: [
      { label: 'highest current of the rows', value: inputAmps, unit: 'A' },
      { label: 'wires and fuses for', value: wireAmps, unit: 'A' },
      ...(limit === null
        ? []
        : [
            {
              label: 'against the amps',
              value:
                inputAmps <= limit ? 'not more than the input takes' : 'more than the input takes',
            },
          ]),
    ],
  };
}
