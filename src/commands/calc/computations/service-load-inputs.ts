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
  loads('appliances', 'appliances fastened in place: water heater, dishwasher, well pump'),
  loads('whole-appliances', 'plugged in, or part of the heating: sump pump, furnace blower'),
  loads('chargers', 'car chargers'),
  optionalVa('cooling', 'air conditioning, all units'),
  {
    kind: 'number',
    key: 'cooling-units',
    about: 'how many equal air conditioners that is',
    unit: 'count',
    from: 1,
    to: 20,
    whole: true,
    assumed: 1,
  },
  optionalVa('heat-pump', 'compressor of a heat pump'),
  optionalVa('backup-heat', 'electric back-up heat of a heat pump'),
  {
    kind: 'choice',
    key: 'backup-kept-apart',
    about: 'whether a control keeps compressor and back-up heat from running together',
    choices: ['yes', 'no'],
    assumed: 'no',
  },
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
  optionalVa(
    'largest-motor',
    'largest motor that is no heating or cooling compressor (standard method)',
  ),
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
