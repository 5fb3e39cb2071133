import { voltageDropByResistance } from '../../../physics/wire-voltage-drop';
import { reactancePer1000Ft, wireReactance } from '../../../tables/electrical/wire-reactance';
import { wireResistance } from '../../../tables/electrical/wire-resistance';
import type { Calculation, Outcome } from '../calculation';
import { citedTables } from '../cited-table';
import type { Values } from '../values';

/** Voltage lost along a wire. */
export const wireDrop: Calculation = {
  name: 'wire-drop',
  about: 'voltage lost along a wire, single phase, there and back',
  inputs: [
    {
      kind: 'choice',
      key: 'size',
      about: 'wire size, AWG or kcmil',
      choices: wireResistance.rows.map((row) => row.size),
    },
    {
      kind: 'choice',
      key: 'metal',
      about: 'what the wire is made of',
      choices: ['copper', 'aluminum'],
      assumed: 'copper',
    },
    { kind: 'number', key: 'amps', about: 'current', unit: 'A', from: 0, to: 1000 },
    { kind: 'number', key: 'distance', about: 'one way', unit: 'ft', from: 0, to: 5000 },
    { kind: 'number', key: 'volts', about: 'at the supply', unit: 'V', from: 100, to: 250 },
  ],
  source: citedTables(wireResistance, wireReactance),
  example: 'size=10 amps=24 distance=150 volts=240',
  run: dropOf,
};

function dropOf(values: Values): Outcome {
  const size = values.word('size');
  const metal = values.word('metal');
  const row = wireResistance.rows.find((r) => r.size === size)!;
  const ohmPer1000Ft = metal === 'copper' ? row.copperStranded : row.aluminum;
  if (ohmPer1000Ft === null)
    return { ok: false, says: `the table has no ${metal} in size ${size}.` };
  const reactance = reactancePer1000Ft(size);
  const drop = voltageDropByResistance({
    amps: values.number('amps'),
    oneWayFt: values.number('distance'),
    ohmPer1000Ft,
    reactancePer1000Ft: reactance,
    supplyVolts: values.number('volts'),
  });
  const ohms = reactance === 0 ? `${ohmPer1000Ft}` : `root(${ohmPer1000Ft}^2 + ${reactance}^2)`;
  const formula = `2 x ft x ${ohms} ohm / 1000 ft x A`;
  return {
    ok: true,
    steps: [
      { label: 'drop', formula, value: drop.volts, unit: 'V' },
      { label: 'share', formula: 'drop / supply', value: drop.percent, unit: '%' },
    ],
    results: [
      { label: 'voltage drop', value: drop.volts, unit: 'V' },
      { label: 'share of the supply', value: drop.percent, unit: '%' },
    ],
    notes: [
      'The code recommends no more than 3% on a branch circuit and 5% in all.',
      reactance === 0
        ? 'Reactance is left out: it changes the drop of wires this thin by less than 1%.'
        : 'Reactance is counted as in steel conduit and at the worst power factor, so the drop is no less than this says.',
    ],
  };
}
