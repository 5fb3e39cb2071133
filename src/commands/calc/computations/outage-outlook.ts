import {
  chanceOfLongOutage,
  outageOutlook,
  type YearlyOutages,
  yearlyOutages,
} from '../../../outage/expected-outages';
import { outageRecord, outagesByState, outagesNational } from '../../../tables/outage-statistics';
import { sayOutageRecord } from '../../../words/en/place/say-outage-record';
import type { Calculation, Outcome } from '../calculation';
import { citedTables } from '../cited-table';
import type { Values } from '../values';

/** Outages to expect in a year, and the chance of a long one. */
export const outageOutlookOf: Calculation = {
  name: 'outage-outlook',
  about: 'outages to expect in a year, and the chance of a long one; weak evidence',
  inputs: [
    {
      kind: 'text',
      key: 'state',
      about: 'state, two letters',
      pattern: /^[A-Za-z]{2}$/,
      form: 'two letters',
      optional: true,
    },
    {
      kind: 'number',
      key: 'lived',
      about: 'outages a year as you remember the last years',
      unit: 'per year',
      from: 0,
      to: 100,
      optional: true,
    },
    {
      kind: 'number',
      key: 'longest',
      about: 'longest in the last five years',
      unit: 'h',
      from: 0,
      to: 2000,
      optional: true,
    },
    {
      kind: 'number',
      key: 'outage',
      about: 'length to look for',
      unit: 'h',
      from: 1,
      to: 2000,
      assumed: 24,
    },
    {
      kind: 'number',
      key: 'years',
      about: 'within how many years',
      unit: 'years',
      from: 1,
      to: 50,
      assumed: 10,
    },
  ],
  source: `${citedTables(outagesNational, outagesByState)}; gamma-Poisson for what you have lived through, lognormal lengths: our judgement`,
  example: 'state=ME lived=3 longest=30 h outage=3 days',
  run: outlookOf,
};

function outlookOf(values: Values): Outcome {
  const outlook = outageOutlook(values.wordOrNull('state')?.toUpperCase() ?? null, {
    timesPerYear: values.numberOrNull('lived') ?? undefined,
    longestHours: values.numberOrNull('longest') ?? undefined,
  });
  const { ordinary, major } = yearlyOutages(outlook);
  const [hours, years] = [values.number('outage'), values.number('years')];
  const chance = chanceOfLongOutage(outlook, { hours, years });
  const percent = (label: string, value: number) => ({ label, value: 100 * value, unit: '%' });
  return {
    ok: true,
    steps: [...steps('ordinary', ordinary), ...steps('major', major)],
    results: [
      percent(`chance of one of ${hours} h or more in ${years} years`, chance.value),
      percent('low', chance.low),
      percent('high', chance.high),
    ],
    notes: [
      `What went in: ${sayOutageRecord(outageRecord(values.wordOrNull('state')))}.`,
      'Averages over customers say little about one home: take it as weak evidence.',
    ],
  };
}

function steps(which: string, { times, hours }: YearlyOutages) {
  const range = ({ low, high }: { low: number; high: number }) =>
    `likely, ${low.toPrecision(2)} to ${high.toPrecision(2)}`;
  return [
    { label: `${which} outages`, formula: range(times), value: times.value, unit: 'a year' },
    { label: `${which} outage hours`, formula: range(hours), value: hours.value, unit: 'h a year' },
  ];
}
