import { batteryRuntimeHours } from '../../../physics/battery-runtime';
import type { Calculation, Outcome } from '../calculation';
import { percentInput } from '../percent-input';
import type { Values } from '../values';

/** Hours a battery carries a steady load. */
export const batteryRuntime: Calculation = {
  name: 'battery-runtime',
  about: 'hours a battery carries a steady load',
  inputs: [
    {
      kind: 'number',
      key: 'usable',
      about: 'energy that may be taken out of the cells',
      unit: 'kWh',
      from: 0,
      to: 1000,
    },
    { kind: 'number', key: 'load', about: 'steady load', unit: 'W', from: 0, to: 100_000 },
    {
      kind: 'number',
      key: 'idle',
      about: 'what the inverter draws with nothing plugged in; it decides long outages',
      unit: 'W',
      from: 0,
      to: 1000,
      assumed: 20,
    },
    percentInput({ key: 'efficiency', about: 'from the cells to the outlet', assumed: 92 }),
  ],
  source:
    'energy balance; 92% is the root of the 85% round trip of Cole & Frazier 2020 (NREL Annual Technology Baseline); idle: our judgement',
  example: 'usable=5 kWh load=300 W',
  run: hoursOf,
};

function hoursOf(values: Values): Outcome {
  const efficiency = values.number('efficiency');
  const of = {
    usableKwh: values.number('usable'),
    loadWatts: values.number('load'),
    idleWatts: values.number('idle'),
    dischargeEfficiency: efficiency / 100,
  };
  const hours = batteryRuntimeHours(of);
  if (hours === null || !Number.isFinite(hours)) {
    return { ok: false, says: 'nothing is drawn, so there is no end to give.' };
  }
  const drawn = of.loadWatts / of.dischargeEfficiency + of.idleWatts;
  return {
    ok: true,
    steps: [
      {
        label: 'drawn from the cells',
        formula: `load / ${efficiency}% + idle`,
        value: drawn,
        unit: 'W',
      },
      { label: 'time', formula: '1000 x kWh / drawn', value: hours, unit: 'h' },
    ],
    results: [{ label: 'time', value: hours, unit: 'h' }],
    notes: ['A cold or an old battery holds less.'],
  };
}
