import { GPM_FEET_PER_HP, pumpingEnergy, pumpPower } from '../../../physics/pump-power';
import type { Calculation, Outcome } from '../calculation';
import { percentInput } from '../percent-input';
import type { Values } from '../values';

/** Power of a water pump from flow and head. */
export const pumpPowerCalculation: Calculation = {
  name: 'pump-power',
  about: 'power of a water pump from flow and total head',
  inputs: [
    { kind: 'number', key: 'gpm', about: 'flow', unit: 'gpm', from: 0.1, to: 500 },
    {
      kind: 'number',
      key: 'head',
      about: 'lift, friction and pressure together; 1 psi is 2.31 ft',
      unit: 'ft',
      from: 1,
      to: 2000,
    },
    percentInput({ key: 'pump-efficiency', about: 'water power over shaft power', assumed: 55 }),
    percentInput({ key: 'motor-efficiency', about: 'shaft power over electric', assumed: 65 }),
    {
      kind: 'number',
      key: 'gallons',
      about: 'water to pump, for time and energy',
      unit: 'gal',
      from: 0,
      to: 100_000,
      optional: true,
    },
  ],
  source:
    'gpm x ft / 3960, Alabama Extension ANR-0548; efficiencies of a small well pump: common practice, no source',
  example: 'gpm=10 head=84 ft',
  run: powerOf,
};

function powerOf(values: Values): Outcome {
  const gpm = values.number('gpm');
  const headFt = values.number('head');
  const [pump, motor] = [values.number('pump-efficiency'), values.number('motor-efficiency')];
  const of = { gpm, headFt, pumpEfficiency: pump / 100, motorEfficiency: motor / 100 };
  const { waterHp, brakeHp, inputWatts } = pumpPower(of);
  const gallons = values.numberOrNull('gallons');
  const energy = gallons === null ? null : pumpingEnergy({ gallons, gpm, inputWatts });
  return {
    ok: true,
    steps: [
      {
        label: 'water power',
        formula: `gpm x ft / ${GPM_FEET_PER_HP}`,
        value: waterHp,
        unit: 'hp',
      },
      { label: 'shaft power', formula: `water power / ${pump}%`, value: brakeHp, unit: 'hp' },
      {
        label: 'electric power',
        formula: `745.7 W/hp x shaft power / ${motor}%`,
        value: inputWatts,
        unit: 'W',
      },
    ],
    results: [
      { label: 'electric power while running', value: inputWatts, unit: 'W' },
      ...(energy === null
        ? []
        : [
            { label: 'time', value: energy.hours * 60, unit: 'min' },
            { label: 'energy', value: energy.kwh, unit: 'kWh' },
          ]),
    ],
    notes: ['This is running power; the start of the motor takes several times as much.'],
  };
}
