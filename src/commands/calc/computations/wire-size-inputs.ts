import type { Input } from '../calculation';
import { percentInput } from '../percent-input';

/** What a wire size asks for. */
export const wireSizeInputs: readonly Input[] = [
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
    key: 'use',
    about:
      'a circuit or feeder, or the service (or one main feeder) that carries the whole dwelling',
    choices: ['circuit', 'dwelling-service'],
    assumed: 'circuit',
  },
  {
    kind: 'choice',
    key: 'column',
    about:
      'temperature column; 60 for NM cable, 75 where every terminal is marked so; left out, 60 up to 100 A and 75 above',
    choices: ['60', '75'],
    optional: true,
  },
  percentInput({ key: 'most-drop', about: 'largest voltage drop', assumed: 3, to: 20 }),
];
