import { lifeCycleCost } from '../../../bill/lifecycle/life-cycle-cost';
import type { Calculation, Input, Outcome } from '../calculation';
import type { Values } from '../values';

const dollars = (key: string, about: string, assumed?: number): Input => ({
  kind: 'number',
  key,
  about,
  unit: '$',
  from: 0,
  to: 10_000_000,
  ...(assumed !== undefined && { assumed }),
});

/** What something costs over its life, in today's dollars. */
export const lifeCycleCostOf: Calculation = {
  name: 'life-cycle-cost',
  about: "what something costs over its life, in today's dollars, inflation apart",
  inputs: [
    {
      kind: 'number',
      key: 'years',
      about: 'study period',
      unit: 'years',
      from: 1,
      to: 60,
      whole: true,
    },
    {
      kind: 'number',
      key: 'rate',
      about: 'discount rate above inflation, a year',
      unit: '%',
      from: 0,
      to: 30,
      assumed: 3,
    },
    dollars('investment', 'purchase, work and permit, less incentives'),
    dollars('replacement', 'cost of one later replacement', 0),
    {
      kind: 'number',
      key: 'replacement-year',
      about: 'when it is bought; at the end of the study it is not',
      unit: 'years',
      from: 1,
      to: 60,
      whole: true,
      assumed: 10,
    },
    dollars('residual', 'worth left at the end', 0),
    dollars('energy', "energy a year at today's prices", 0),
    {
      kind: 'number',
      key: 'energy-rise',
      about: 'rise of energy prices above inflation, a year',
      unit: '%',
      from: -20,
      to: 20,
      assumed: 0,
    },
    {
      kind: 'number',
      key: 'energy-factor',
      about: 'a published present-value factor in place of energy-rise',
      unit: '',
      from: 0,
      to: 200,
      optional: true,
    },
    dollars('upkeep', 'operating, maintenance and repair a year', 0),
  ],
  source:
    'NIST Handbook 135 (1995), life-cycle cost of building projects; ASTM E917; year-end payments',
  example:
    'years=20 rate=3% investment=103000 replacement=12000 replacement-year=12 residual=3500 energy=20000 energy-factor=15.13 upkeep=7000',
  run: costOf,
};

function costOf(values: Values): Outcome {
  const cost = lifeCycleCost({
    years: values.number('years'),
    rate: values.number('rate') / 100,
    investment: values.number('investment'),
    replacements: [{ year: values.number('replacement-year'), cost: values.number('replacement') }],
    residual: values.number('residual'),
    energyPerYear: values.number('energy'),
    energyEscalation: values.number('energy-rise') / 100,
    energyFactor: values.numberOrNull('energy-factor') ?? undefined,
    upkeepPerYear: values.number('upkeep'),
  });
  const step = (label: string, formula: string, value: number) => {
    return { label, formula, value, unit: '$' };
  };
  return {
    ok: true,
    steps: [
      step('investment', 'paid today', cost.investment),
      step('replacement', 'cost x (1 + d)^-year', cost.replacements),
      step('residual', 'worth x (1 + d)^-years', -cost.residual),
      step('energy', 'a year x factor, or sum of ((1 + e) / (1 + d))^t', cost.energy),
      step('upkeep', 'a year x ((1 + d)^n - 1) / (d (1 + d)^n)', cost.upkeep),
    ],
    results: [{ label: 'life-cycle cost', value: cost.total, unit: '$' }],
  };
}
