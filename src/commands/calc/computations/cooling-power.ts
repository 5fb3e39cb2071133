import { coolingWatts, copFromEer } from '../../../physics/cooling-power';
import type { Calculation, Outcome } from '../calculation';
import type { Values } from '../values';

/** Electric power of an air conditioner or heat pump while cooling. */
export const coolingPower: Calculation = {
  name: 'cooling-power',
  about: 'electric power of an air conditioner while it cools',
  inputs: [
    {
      kind: 'number',
      key: 'capacity',
      about: 'cooling capacity, Btu an hour, or in tons ("3 tons")',
      unit: 'Btu',
      from: 1000,
      to: 240_000,
    },
    {
      kind: 'number',
      key: 'eer',
      about: 'energy efficiency ratio at 95 F; SEER is the mean of a season, not this',
      unit: 'EER',
      from: 4,
      to: 40,
    },
  ],
  source: 'definition of EER, Btu/h over W; 12,000 Btu/h a ton (NIST SP 811)',
  example: 'capacity=3 tons eer=12',
  run: wattsOf,
};

function wattsOf(values: Values): Outcome {
  const btuPerHour = values.number('capacity');
  const eer = values.number('eer');
  const watts = coolingWatts({ btuPerHour, eer });
  return {
    ok: true,
    steps: [
      { label: 'electric power', formula: 'Btu/h / EER', value: watts, unit: 'W' },
      { label: 'heat moved over work', formula: 'EER / 3.412', value: copFromEer(eer), unit: '' },
    ],
    results: [{ label: 'electric power while cooling', value: watts, unit: 'W' }],
    notes: [
      'Hotter air outdoors takes more; the start of the compressor takes several times as much.',
    ],
  };
}
