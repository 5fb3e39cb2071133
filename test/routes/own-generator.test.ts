import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { widthsOf } from '../../src/home/build-home';
import type { Load } from '../../src/home/home';
import type { LoadId } from '../../src/home/loads/load-id';
import { wireRuns } from '../../src/plan/electrical/wires';
import { fitPower } from '../../src/routes/fit-power';
import { siteShare } from '../../src/routes/generator-size';
import { chargingGenerator } from '../../src/routes/kinds/charging-generator';
import { ownGenerator } from '../../src/routes/kinds/own-generator';
import { generatorCords, generatorInlet } from '../../src/routes/kinds/portable-generator';
import { vehicle } from '../../src/routes/kinds/vehicle';
import { sayLeftOut } from '../../src/words/en/say-left-out';
import { houseWith } from '../plan/electrical/electrical-home';

const widths = widthsOf(interview);
const own = {
  'own-sources': ['engine-portable'],
  'engine-watts': 1600,
  'engine-volts': 'v120',
  'engine-fuel': 'gasoline',
  'engine-connect': 'cords',
  'must-run': ['fridge', 'lights'],
  'fridge-count': 1,
  'gasoline-gallons': 10,
};

describe('a generator of their own', () => {
  // An inverter set of 1,600 W running has a peak of about 2,000 W on its label (common practice, no source).
  test('lends its peak where it is an inverter set or nobody knows, more than twice its power where it is not', () => {
    const lends = (changed = {}) => ownGenerator(houseWith({ ...own, ...changed }))!.step.startVa;
    const share = siteShare(houseWith(own));
    expect(lends({ 'engine-kind': 'inverter' })).toBeCloseTo(2000 * share, 6);
    expect(lends()).toBeCloseTo(2000 * share, 6);
    expect(lends({ 'engine-kind': 'not sure' })).toBeCloseTo(2000 * share, 6);
    expect(lends({ 'engine-kind': 'ordinary' })).toBeGreaterThan(3500 * share);
  });

  test('gives about a tenth less on propane, unless the label was for propane', () => {
    const watts = (changed: object) => ownGenerator(houseWith({ ...own, ...changed }))!.step.watts;
    const full = watts({});
    expect(watts({ 'engine-fuel': 'propane' })).toBeCloseTo(0.9 * full, 6);
    expect(watts({ 'engine-fuel': 'propane', 'engine-watts-for': 'gasoline' })).toBeCloseTo(
      0.9 * full,
      6,
    );
    expect(watts({ 'engine-fuel': 'propane', 'engine-watts-for': 'this-fuel' })).toBeCloseTo(
      full,
      6,
    );
  });

  const large = { ...own, 'engine-watts': 7500, 'engine-volts': 'v240', 'engine-kind': 'ordinary' };

  test('with its inlet and switch there buys neither again, and no permit for them', () => {
    const classes = (changed: object) =>
      generatorInlet(houseWith({ ...large, ...changed }), widths).parts.map((one) => [
        one.equipmentClass,
        one.costUsd.value,
      ]);
    const there = { 'engine-connect': 'inlet', 'transfer-existing': 'interlock' };
    expect(classes(there)).toContainEqual(['inlet-interlock', 0]);
    expect(classes(there).map(([name]) => name)).not.toContain('permit');
    // A switch alone, or an inlet with a switch nobody can name, is not yet both.
    for (const part of [{ 'transfer-existing': 'interlock' }, { 'engine-connect': 'inlet' }]) {
      const price = classes(part).find(([name]) => name === 'inlet-interlock')![1];
      expect(price).toBeGreaterThan(0);
      expect(classes(part).map(([name]) => name)).toContain('permit');
    }
  });

  test('of 120 V goes on no 240 V inlet: neither one that is there nor one to buy', () => {
    const there = { 'engine-connect': 'inlet', 'transfer-existing': 'interlock' };
    const route = generatorInlet(houseWith({ ...own, ...there }), widths);
    const inlet = route.parts.find((one) => one.equipmentClass === 'inlet-interlock')!;
    expect(inlet.costUsd.value).toBeGreaterThan(0);
    expect(inlet.called.code).toBe('inlet-of-120');
    const bought = generatorInlet(houseWith({ 'must-run': ['lights'] }), widths);
    expect(bought.power!.continuousWatts).toBeGreaterThanOrEqual(3000);
  });

  // NEC Chapter 9 Table 8: the same watts at half the volts lose four times the share in the same wire.
  test('has its voltage drop at its own voltage', () => {
    const at = (changed: object) => {
      const home = houseWith({ ...own, 'engine-watts': 3000, ...changed });
      return wireRuns(home, generatorInlet(home, widths)).find(
        (run) => run.run === 'inlet-to-panel',
      )!;
    };
    expect(at({}).volts).toBe(120);
    expect(at({}).loadAmps).toBeCloseTo(25, 6);
    expect(at({ 'engine-volts': 'v240' }).volts).toBe(240);
    expect(at({ 'engine-volts': 'v240' }).loadAmps).toBeCloseTo(12.5, 6);
  });
});

describe('a battery that a generator refills', () => {
  const generatorOf = (changed: object) =>
    chargingGenerator(houseWith({ ...own, ...changed }), { inverterWatts: 7600, kwhPerDay: 10 });

  test('is refilled by their own where that is strong enough, at no price', () => {
    const theirs = generatorOf({ 'engine-watts': 3000, 'engine-kind': 'inverter' });
    expect(theirs.part.costUsd.value).toBe(0);
    expect(theirs.size.ratedKw).toBe(3);
    expect(theirs.type).toBe('portable-inverter');
  });

  test('has one bought where their own would run for more than sixteen hours a day', () => {
    const bought = generatorOf({ 'engine-watts': 800 });
    expect(bought.part.costUsd.value).toBeGreaterThan(0);
    expect(bought.size.ratedKw).toBeGreaterThan(0.8);
  });
});

describe('each half of a 120/240 V set', () => {
  const home = houseWith({ 'must-run': ['fridge', 'lights'], 'fridge-count': 1 });
  const [like] = home.loads.filter((load) => load.volts === 120);
  const figure = (value: number) => ({ ...like!.runningWatts, low: value, value, high: value });
  const load = (id: LoadId, watts: number): Load => ({
    ...like!,
    id,
    startVa: null,
    runningWatts: figure(watts),
    runningVa: figure(watts),
    rank: 'must' as const,
  });
  const carriedBy = (watts: number, volts: 120 | 240, ...loads: Load[]) =>
    fitPower({
      loads,
      seasons: home.goalSeasons,
      steps: [{ watts, startVa: 2 * watts, volts, startsByHalf: true }],
      startEnd: 'value',
      maySoftStart: false,
      source: 'portable-generator',
    })!;

  test('carries half its power and no more: 1,500 W beside 300 W on one half of 3.5 kW is 1,750 W', () => {
    expect(
      carriedBy(3500, 240, load('space-heater', 1500), load('lights-led', 300)).carried,
    ).toHaveLength(2);
    const two = carriedBy(3000, 240, load('space-heater', 1600), load('lights-led', 100));
    expect(two.carried.map((one) => one.id)).toEqual(['lights-led']);
    expect(two.leftOut[0]!.why).toMatchObject({ code: 'half-too-small', halfWatts: 1500 });
    expect(sayLeftOut(two.leftOut[0]!.why)).toContain('1,500 W on each');
    // A set of 120 V puts all of its power on one.
    expect(
      carriedBy(3000, 120, load('space-heater', 1600), load('lights-led', 100)).carried,
    ).toHaveLength(2);
  });

  test('lends half of its start to each: of two that start as hard as that, one on each half', () => {
    const pump = (id: LoadId, va: number) => ({
      ...load(id, 300),
      startVa: { ...like!.runningVa, low: va, value: va, high: va },
      selfStarting: false,
    });
    // 3.5 kW lends 7,000 VA in all, 3,500 on each half.
    expect(carriedBy(3500, 240, pump('sump', 3200), pump('waste', 3200)).carried).toHaveLength(2);
    const hard = carriedBy(3500, 240, pump('sump', 3600), load('lights-led', 100));
    expect(hard.leftOut.map((one) => one.load)).toEqual(['sump']);
    expect(sayLeftOut(hard.leftOut[0]!.why)).toContain('3,500 VA for a start');
  });

  test('never drops a 240 V load for what weighs on one half', () => {
    const pump = { ...load('well', 1000), volts: 240 as const };
    const left = carriedBy(4000, 240, load('space-heater', 1700), pump).leftOut.map(
      (one) => one.load,
    );
    expect(left).toEqual(['space-heater']);
  });
});

test('a vehicle with a 240 V outlet says what that outlet could do, and cords still bring no 240 V', () => {
  const with_ = (volts: string) =>
    vehicle(
      houseWith({
        'own-sources': ['ev-outlet'],
        'vehicle-kind': 'battery-only',
        'vehicle-kwh': 60,
        'vehicle-watts': 3600,
        'vehicle-volts': volts,
        'must-run': ['fridge', 'lights'],
        'fridge-count': 1,
      }),
    );
  expect(with_('v240').notes).toContain('vehicle-240-outlet');
  expect(with_('v120').notes).not.toContain('vehicle-240-outlet');
});

test('cords from a generator of unknown sort never carry more than from an ordinary one', () => {
  const carries = (kind: string) =>
    generatorCords(houseWith({ ...own, 'engine-kind': kind }), widths).carries.length;
  expect(carries('not sure')).toBeLessThanOrEqual(carries('ordinary'));
});
