import { smallestWire } from '../../../physics/wire-size';
import { citeTable } from '../../../tables/table';
import {
  type TerminalColumn,
  type WireMetal,
  wireAmpacity,
  wireChoices,
} from '../../../tables/wire-ampacity';
import { wireResistance } from '../../../tables/wire-resistance';
import type { Calculation, Outcome } from '../calculation';
import { percentInput } from '../percent-input';
import type { Values } from '../values';

/** Thinnest wire for a breaker, a load and a distance. */
export const wireSize: Calculation = {
  name: 'wire-size',
  about: 'thinnest wire for a breaker, a load and a distance; a planning figure',
  inputs: [
    { kind: 'number', key: 'breaker', about: 'breaker', unit: 'A', from: 15, to: 400 },
    { kind: 'number', key: 'amps', about: 'load', unit: 'A', from: 0, to: 400 },
    {
      kind: 'choice',
      key: 'continuous',
      about: 'on for three hours or more',
      choices: ['yes', 'no'],
      assumed: 'yes',
    },
    { kind: 'number', key: 'distance', about: 'one way', unit: 'ft', from: 0, to: 5000 },
    { kind: 'number', key: 'volts', about: 'at the supply', unit: 'V', from: 100, to: 250 },
    {
      kind: 'choice',
      key: 'metal',
      about: 'what the wire is made of',
      choices: ['copper', 'aluminum'],
      assumed: 'copper',
    },
    {
      kind: 'choice',
      key: 'column',
      about: 'temperature column; 60 for NM cable and for terminals not marked 75 C',
      choices: ['60', '75'],
      assumed: '60',
    },
    percentInput({ key: 'most-drop', about: 'largest voltage drop', assumed: 3, to: 20 }),
  ],
  source: [wireAmpacity, wireResistance].map((table) => citeTable(table)).join('; '),
  example: 'breaker=20 amps=20 distance=100 volts=120 continuous=no column=75',
  run: sizeOf,
};

function sizeOf(values: Values): Outcome {
  const metal = values.word('metal') as WireMetal;
  const column = Number(values.word('column')) as TerminalColumn;
  const continuous = values.word('continuous') === 'yes';
  const [breakerAmps, loadAmps] = [values.number('breaker'), values.number('amps')];
  const wire = smallestWire({
    options: wireChoices(metal, column),
    breakerAmps,
    loadAmps,
    continuous,
    oneWayFt: values.number('distance'),
    supplyVolts: values.number('volts'),
    maxDropPercent: values.number('most-drop'),
  });
  if (wire === null) return { ok: false, says: 'no wire in the table is thick enough for that.' };
  const load = continuous ? '1.25 x load' : 'load';
  return {
    ok: true,
    steps: [
      {
        label: 'current to carry',
        formula: `the larger of breaker and ${load}`,
        value: Math.max(breakerAmps, loadAmps * (continuous ? 1.25 : 1)),
        unit: 'A',
      },
      {
        label: 'ampacity',
        formula: `${wire.size}, ${metal}, ${column} C column`,
        value: wire.ampacityAmps,
        unit: 'A',
      },
      { label: 'voltage drop', formula: 'see wire-drop', value: wire.drop.percent, unit: '%' },
    ],
    results: [
      { label: 'thinnest wire', value: `${wire.size} ${metal}` },
      { label: 'decided by', value: wire.limitedBy },
    ],
    notes: ['No correction for heat or bundling. A licensed electrician decides the wire.'],
  };
}
