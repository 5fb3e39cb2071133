import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Answers } from '../../src/interview/answers';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { sayLoadName } from '../../src/words/en/loads/say-load-name';
import { answersOf } from '../households/read-household';

const loadOf = (id: string, changed: Answers) => {
  const home = homeFromAnswers(interview, { ...answersOf('tower-six'), ...changed }, '2026-11-25');
  return home.loads.find((load) => load.id === id)!;
};

test('a ventilator counts the hours told, and day and night where nobody told', () => {
  const told = { 'medical-devices': ['ventilator'], 'ventilator-watts': 200 };
  const half = loadOf('ventilator', { ...told, 'ventilator-hours': 12 });
  // 200 W x 12 h = 2.4 kWh a day, x 24 h = 4.8.
  expect(half.kwhPerDay.winter.value).toBeCloseTo(2.4, 9);
  expect(half.kwhPerDay.winter.high).toBeCloseTo(2.4, 9);
  expect(loadOf('ventilator', told).kwhPerDay.winter.value).toBeCloseTo(4.8, 9);
  const unsure = loadOf('ventilator', { ...told, 'ventilator-hours': 'not sure' });
  expect(unsure.kwhPerDay.winter.low).toBeCloseTo(4.8, 9);
});

test.each([
  ['cpap', 'cpap', { 'cpap-watts': 40, 'cpap-hours': 10 }, 0.4],
  ['dialysis', 'dialysis', { 'dialysis-watts': 1000, 'dialysis-hours': 3 }, 3],
  ['other-medical', 'suction', { 'other-medical-watts': 90, 'other-medical-hours': 2 }, 0.18],
] as const)('the hours of %s count', (id, ticked, told, kwh) => {
  const load = loadOf(id, { 'medical-devices': [ticked], ...told });
  expect(load.kwhPerDay.summer.value).toBeCloseTo(kwh, 9);
});

test('no hour asks for more than the device draws', () => {
  for (const hours of [4, 8, 12, 20, 24]) {
    const { kwhPerDay, shape, runningWatts } = loadOf('cpap', {
      'medical-devices': ['cpap'],
      'cpap-watts': 50,
      'cpap-hours': hours,
    });
    const mostW = Math.max(...shape) * kwhPerDay.winter.value * 1000;
    expect(mostW).toBeLessThanOrEqual(runningWatts.value * 1.001);
  }
});

test('a power chair that was named is called by its name', () => {
  const chair = loadOf('other-medical', { 'medical-devices': ['power-chair'] });
  expect(chair).toMatchObject({ life: false, startVa: null });
  expect(sayLoadName(chair.called)).toBe('Power wheelchair charger');
  const both = loadOf('other-medical', { 'medical-devices': ['suction', 'medical-bed'] });
  expect(both.life).toBe(true);
  expect(sayLoadName(both.called)).toBe('Suction or cough machine with medical bed or lift');
});

test('a device nobody told the watts or hours of counts by its own row, asked or not', () => {
  const nebulizer = { 'medical-devices': ['nebuliser'] };
  const unsure = { 'other-medical-watts': 'not sure', 'other-medical-hours': 'not sure' };
  for (const told of [{}, unsure]) {
    const { kwhPerDay, runningWatts } = loadOf('other-medical', { ...nebulizer, ...told });
    // Sessions of minutes at 60 to 180 W: a day's use is a tenth of a kilowatt-hour, and under a half at most.
    expect(runningWatts).toMatchObject({ low: 60, value: 120, high: 180 });
    expect(kwhPerDay.summer.value).toBeCloseTo(0.12 * 0.7, 9);
    expect(kwhPerDay.summer.high).toBeCloseTo(0.18 * 2, 9);
  }
});

test('a device a life may hang on runs all day at its high end until its hours are told', () => {
  for (const ticked of ['suction', 'feeding-pump', 'other-device']) {
    const { kwhPerDay, runningWatts, life } = loadOf('other-medical', {
      'medical-devices': [ticked],
    });
    expect(life).toBe(true);
    expect(kwhPerDay.winter.high).toBeCloseTo((24 * runningWatts.high) / 1000, 9);
  }
});

test('several devices add up until they are told together', () => {
  const named = { 'medical-devices': ['nebuliser', 'medical-bed'] };
  const one = (ticked: string) => loadOf('other-medical', { 'medical-devices': [ticked] });
  const [nebulizer, bed, both] = [
    one('nebuliser'),
    one('medical-bed'),
    loadOf('other-medical', named),
  ];
  for (const end of ['low', 'value', 'high'] as const) {
    expect(both.runningWatts[end]).toBeCloseTo(
      nebulizer.runningWatts[end] + bed.runningWatts[end],
      9,
    );
    expect(both.startVa![end]).toBeCloseTo(nebulizer.startVa![end] + bed.startVa![end], 9);
    expect(both.kwhPerDay.winter[end]).toBeCloseTo(
      nebulizer.kwhPerDay.winter[end] + bed.kwhPerDay.winter[end],
      9,
    );
  }
  const told = loadOf('other-medical', { ...named, 'other-medical-hours': 2 });
  expect(told.kwhPerDay.winter.value).toBeCloseTo((both.runningWatts.value * 2) / 1000, 9);
});

test('heat tape that was told is counted, at the rank it was given', () => {
  const tape = { 'freeze-risk': ['heat-tape'] };
  // 5 to 8 W a foot, common practice: some tens of feet on a thermostat take 1 to 5 kWh on a hard winter day.
  const must = loadOf('heat-tape', { ...tape, 'must-run': ['heat-tape'], 'nice-run': ['none'] });
  expect(must.rank).toBe('must');
  expect(must.kwhPerDay.winter.value).toBeGreaterThan(1);
  expect(must.kwhPerDay.winter.value).toBeLessThan(5);
  expect(loadOf('heat-tape', { ...tape, 'must-run': 'not sure' }).rank).toBe('must');
  expect(loadOf('heat-tape', { 'freeze-risk': ['crawl-pipes'] })).toBeUndefined();
});

test('a stair lift with its own battery starts no motor on the backup; not known counts as without', () => {
  const lift = { 'access-lifts': ['stairlift'] };
  const own = loadOf('stairlift', { ...lift, 'stairlift-battery': 'yes' });
  expect(own.startVa).toBeNull();
  for (const answer of ['no', 'not sure']) {
    const without = loadOf('stairlift', { ...lift, 'stairlift-battery': answer });
    expect(without.startVa!.high).toBeGreaterThan(own.runningVa.high);
  }
});
