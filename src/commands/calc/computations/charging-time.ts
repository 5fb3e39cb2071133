import { chargingTime } from '../../../physics/charging-time';
import type { Calculation, Outcome } from '../calculation';
import { percentInput } from '../percent-input';
import type { Values } from '../values';

/** Hours to put energy into a battery from a source through a charger. */
export const chargingTimeOf: Calculation = {
  name: 'charging-time',
  about: 'hours to charge a battery from a generator, the grid or the sun',
  inputs: [
    { kind: 'number', key: 'energy', about: 'to be stored', unit: 'kWh', from: 0, to: 1000 },
    {
      kind: 'number',
      key: 'source',
      about: 'what the source can give',
      unit: 'kW',
      from: 0.05,
      to: 200,
    },
    {
      kind: 'number',
      key: 'charger',
      about: 'what the charger takes in',
      unit: 'kW',
      from: 0.05,
      to: 200,
    },
    percentInput({ key: 'efficiency', about: 'from the charger input to the cells', assumed: 92 }),
  ],
  source:
    'energy balance; 92% is the root of the 85% round trip of Cole & Frazier 2020 (NREL Annual Technology Baseline)',
  example: 'energy=8 kWh source=5 kW charger=3 kW efficiency=95%',
  run: timeOf,
};

function timeOf(values: Values): Outcome {
  const efficiency = values.number('efficiency');
  const { hours, limitedBy, sourceKwh } = chargingTime({
    storedKwh: values.number('energy'),
    sourceKw: values.number('source'),
    chargerInputKw: values.number('charger'),
    efficiency: efficiency / 100,
  });
  const formula = 'energy from the source / the smaller of source and charger';
  return {
    ok: true,
    steps: [
      {
        label: 'energy from the source',
        formula: `energy / ${efficiency}%`,
        value: sourceKwh,
        unit: 'kWh',
      },
      { label: 'time', formula, value: hours, unit: 'h' },
    ],
    results: [
      { label: 'time', value: hours, unit: 'h' },
      { label: 'limited by', value: `the ${limitedBy}` },
    ],
    notes: ['The last part of a charge is slower. Never charge a lithium battery below freezing.'],
  };
}
