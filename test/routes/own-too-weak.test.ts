import { expect, test } from 'vitest';
import { buysGenerator } from '../../src/routes/buys-generator';
import { mustMissed } from '../../src/routes/must-carried';
import { frozenPlan } from '../frozen-plans';
import { answersOf } from '../households/read-household';

/** A suburb with a furnace and a sump pump, and a small generator that runs neither. */
const small = {
  ...answersOf('birch-street'),
  'own-sources': ['engine-portable'],
  'engine-watts': 1800,
  'engine-fuel': 'gasoline',
  'engine-kind': 'inverter',
  'engine-volts': 'v120',
  'budget-now': 4000,
};
const planWith = (changed: object) => frozenPlan({ ...small, ...changed }, '2026-11-25', 5);

test('a generator that is there and too weak hides none that could be bought', () => {
  const { home, advice, electrical } = planWith({});
  expect(advice.route.kind).toBe('engine-inlet');
  expect(mustMissed(home, advice.route)).toEqual([]);
  expect(advice.route.generator!.ratedKw).toBeGreaterThan(1.8);
  const generator = advice.route.parts.find((one) => one.equipmentClass === 'portable-engine')!;
  expect(generator.costUsd.low).toBeGreaterThan(0);
  // Its inlet is for what is bought, of 240 V, and not for the small one.
  expect(electrical.wires.find(({ run }) => run === 'inlet-to-panel')?.volts).toBe(240);
  // The list still has the one that is there.
  expect(advice.list.some(({ route }) => route?.generator?.ratedKw === 1.8)).toBe(true);
});

test('one that is strong enough is not bought again', () => {
  const { home, advice } = planWith({ 'engine-watts': 7500, 'engine-volts': 'v240' });
  expect(mustMissed(home, advice.route)).toEqual([]);
  const bought = advice.route.parts.filter(
    ({ equipmentClass, costUsd }) => equipmentClass === 'portable-engine' && costUsd.high > 0,
  );
  expect(bought).toEqual([]);
});

test('so it is with one that starts by itself', () => {
  const fixed = {
    'own-sources': ['engine-standby'],
    'engine-fuel': 'natural-gas',
    'budget-now': 9000,
  };
  const routesOf = (changed: object) => planWith({ ...fixed, ...changed }).advice.list;
  const bought = (changed: object) =>
    routesOf(changed).some(({ route }) => route?.kind === 'standby-engine' && buysGenerator(route));
  expect(bought({ 'engine-watts': 2000, 'engine-volts': 'v120' })).toBe(true);
  expect(bought({ 'engine-watts': 10_000, 'engine-volts': 'v240' })).toBe(false);
});
