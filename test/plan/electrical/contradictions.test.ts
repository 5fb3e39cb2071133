import { describe, expect, test } from 'vitest';
import type { Answers } from '../../../src/interview/answers';
import { contradictions } from '../../../src/plan/contradictions';
import { sayContradiction } from '../../../src/words/en/contradictions/say-contradiction';
import { planOf } from '../../households/read-household';
import { answersWith, houseWith } from './electrical-home';

type Changed = Record<string, Answers[string] | undefined>;
const idsOf = (changed: Changed) =>
  contradictions(houseWith(changed), answersWith(changed)).map((one) => one.id);

const well: Changed = { 'water-source': 'well', 'must-run': ['well'] };
const clocked: Changed = {
  'bill-plan': 'time-of-use',
  'price-steps': 'three',
  'price-peak': 40,
  'price-middle': 20,
  'price-low': 10,
};
const generator: Changed = {
  'own-sources': ['engine-portable'],
  'engine-fuel': 'gasoline',
  'engine-watts': 3500,
};

/** Each: what it is called, a home with it, and the twin without it. Pairs of practice, no published source. */
const pairs: [id: string, has: Changed, twin: Changed][] = [
  [
    'charger-on-small-service',
    { 'main-amps': 60, 'big-loads': ['ev-charger'], 'ev-breaker': 50 },
    { 'main-amps': 200, 'big-loads': ['ev-charger'], 'ev-breaker': 50 },
  ],
  [
    'gas-heat-without-gas',
    { 'heat-main': 'gas-furnace', 'gas-supply': 'none' },
    { 'heat-main': 'gas-furnace', 'gas-supply': 'town-gas' },
  ],
  [
    'inlet-without-switch',
    { ...generator, 'engine-connect': 'inlet', 'transfer-existing': 'none' },
    { ...generator, 'engine-connect': 'inlet', 'transfer-existing': 'interlock' },
  ],
  ['main-over-bus', { 'panel-bus': 125 }, { 'panel-bus': 200 }],
  [
    'apartment-with',
    { 'home-kind': 'apartment', 'water-source': 'well' },
    { 'home-kind': 'apartment', 'water-source': undefined },
  ],
  [
    'deep-pump-at-120',
    { ...well, 'well-volts': 'v120', 'well-depth': 240 },
    { ...well, 'well-volts': 'v240', 'well-depth': 240 },
  ],
  [
    'pump-volts-amps',
    { ...well, 'well-hp': 1, 'well-volts': 'v120', 'well-run-amps': 7 },
    { ...well, 'well-hp': 1, 'well-volts': 'v240', 'well-run-amps': 7 },
  ],
  [
    'start-below-run',
    { ...well, 'well-run-amps': 12, 'well-start-amps': 8 },
    { ...well, 'well-run-amps': 8, 'well-start-amps': 45 },
  ],
  [
    'over-outlet',
    { 'medical-devices': ['oxygen-concentrator'], 'oxygen-watts': 2500 },
    { 'medical-devices': ['oxygen-concentrator'], 'oxygen-watts': 350 },
  ],
  [
    'must-run-over-bill',
    { ...well, 'must-run': ['water-heater', 'fridge'], 'bill-kwh': 60, 'bill-season': 'winter' },
    { ...well, 'must-run': ['water-heater', 'fridge'], 'bill-kwh': 900, 'bill-season': 'winter' },
  ],
  [
    'life-without-second-way',
    { 'medical-devices': ['ventilator'], 'second-source': ['none'] },
    { 'medical-devices': ['ventilator'], 'second-source': ['spare-batteries'] },
  ],
  ['nobody-for-engine', { ...generator, operators: 'none' }, { ...generator, operators: 'two' }],
  [
    'goal-beyond-fuel',
    { ...generator, 'gasoline-gallons': 5, 'goal-hours': 120, 'fuel-refill': 'no' },
    { ...generator, 'gasoline-gallons': 25, 'goal-hours': 24, 'fuel-refill': 'no' },
  ],
  [
    'normal-life-small-budget',
    { 'goal-scope': 'normal', 'budget-now': 100, 'budget-later': 300 },
    { 'goal-scope': 'normal', 'budget-now': 100, 'budget-later': 20_000 },
  ],
  [
    'cheap-hours-at-peak',
    { ...clocked, 'peak-hours': 'h7-23', 'low-hours': 'h9-14' },
    { ...clocked, 'peak-hours': 'h16-21', 'low-hours': 'h9-14' },
  ],
  [
    'must-run-at-240',
    { ...well, ...generator, 'well-volts': 'v240', 'engine-volts': 'v120' },
    { ...well, ...generator, 'well-volts': 'v240', 'engine-volts': 'v240' },
  ],
  [
    'interlock-without-main',
    { 'panel-kind': 'split-bus', 'transfer-existing': 'interlock' },
    { 'panel-kind': 'main-breaker', 'transfer-existing': 'interlock' },
  ],
  [
    'battery-below-flood',
    { 'battery-place': 'basement', 'flood-history': 'inside' },
    { 'battery-place': 'basement', 'flood-history': 'never' },
  ],
];

describe('two answers that do not fit together', () => {
  test.each(pairs)('are asked about, and their twin is not: %s', (id, has, twin) => {
    expect(idsOf(has)).toContain(id);
    expect(idsOf(twin)).not.toContain(id);
  });

  test('are shown as they were given, with the questions to look at again', () => {
    const changed = { 'panel-bus': 125 };
    const [found] = contradictions(houseWith(changed), answersWith(changed));
    expect(found).toMatchObject({ mainAmps: 200, busAmps: 125 });
    const { answers } = sayContradiction(found!);
    expect(answers.join(' ')).toContain('200 A');
    expect(answers.join(' ')).toContain('125 A');
    expect(found!.questions).toEqual(['main-amps', 'panel-bus']);
  });

  test('are not made up from what was only assumed', () => {
    expect(
      idsOf({ 'main-amps': 60, 'big-loads': ['ev-charger'], 'ev-breaker': 'not sure' }),
    ).toEqual([]);
    expect(contradictions(houseWith(), answersWith({}))).toEqual([]);
  });
});

test('the hours of fuel told against the goal are those of the route with that engine', () => {
  // An ordinary set carries what is good to have too; an inverter set, or one of unknown sort, starts less.
  const own = {
    ...generator,
    'engine-kind': 'ordinary',
    'engine-watts': 3500,
    'gasoline-gallons': 10,
    'fuel-refill': 'no',
  };
  const plan = planOf('birch-street', own);
  const [found] = plan.electrical.toSettle.filter((one) => one.id === 'goal-beyond-fuel');
  const route = plan.routes.find((one) => one.kind === 'engine-inlet')!;
  // The route carries what is good to have as well, so its fuel lasts a little shorter.
  const hours = Math.round(found!.fuelHours);
  const onRoute = route.lasting.hours!.value;
  expect(hours).toBeGreaterThanOrEqual(Math.floor(onRoute));
  expect(hours).toBeLessThan(1.25 * onRoute);
});
