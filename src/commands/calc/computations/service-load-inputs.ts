import type { Input } from '../calculation';

const mostVa = 200_000;

const optionalVa = (key: string, about: string): Input => ({
  kind: 'number',
  key,
  about,
  unit: 'VA',
  from: 0,
  to: mostVa,
  optional: true,
});

const loads = (key: string, about: string): Input => ({
  kind: 'list',
  key,
  about,
  unit: 'VA',
  to: mostVa,
  optional: true,
});

const circuits = (key: string, about: string, from: number): Input => ({
  kind: 'number',
  key,
  about,
  unit: 'count',
  from,
  to: 20,
  whole: true,
  assumed: from,
});

/** What a dwelling load calculation asks for, by nameplate. */
export const serviceLoadInputs: readonly Input[] = [
  {
    kind: 'choice',
    key: 'method',
    about: 'Part III, 220.82 for a new dwelling, or 220.83 for an existing one',
    choices: ['standard', 'optional', 'existing'],
  },
  {
    kind: 'choice',
    key: 'edition',
    about: 'code edition in force',
    choices: ['2017', '2020', '2023', '2026'],
    assumed: '2020',
  },
  { kind: 'number', key: 'area', about: 'floor area', unit: 'ft2', from: 100, to: 50_000 },
  circuits('kitchen-circuits', '20 A kitchen circuits', 2),
  circuits('laundry-circuits', '20 A laundry circuits', 1),
  loads('cooking', 'ranges, ovens, cooktops'),
  optionalVa('dryer', 'electric dryer'),
  loads('appliances', 'fixed appliances: water heater, dishwasher, pumps'),
  loads('chargers', 'car chargers'),
  optionalVa('cooling', 'air conditioning'),
  optionalVa('heat-pump', 'compressor of a heat pump'),
  optionalVa('backup-heat', 'electric back-up heat of a heat pump'),
  optionalVa('electric-heat', 'central electric heat or room heaters'),
  {
    kind: 'number',
    key: 'heat-controls',
    about: 'separately controlled room heaters',
    unit: 'count',
    from: 1,
    to: 50,
    whole: true,
    optional: true,
  },
  optionalVa('largest-motor', 'largest motor not counted as cooling (standard method)'),
  {
    kind: 'choice',
    key: 'adds-heating-or-cooling',
    about: 'whether heating or cooling is being added (existing)',
    choices: ['yes', 'no'],
    assumed: 'yes',
  },
  {
    kind: 'choice',
    key: 'volts',
    about: 'line to line',
    choices: ['240', '208'],
    assumed: '240',
  },
];
