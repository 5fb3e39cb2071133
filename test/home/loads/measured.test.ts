import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { widthsOf } from '../../../src/home/build-home';
import { Facts } from '../../../src/home/facts';
import type { Load } from '../../../src/home/home';
import { loadsOfHome } from '../../../src/home/loads/loads-of-home';
import { measuredThings } from '../../../src/home/loads/measured-things';
import type { Answers } from '../../../src/interview/answers';
import { resolve } from '../../../src/interview/questions/resolve';
import { sayOrigin } from '../../../src/words/en/explain/say-origin';
import { answersOf } from '../../households/read-household';

const widths = widthsOf(interview);
const loadsOf = (answers: Answers) =>
  loadsOfHome(new Facts(resolve(interview.questions, answers, 'assume')), widths, null).usual;
const loadOf = (answers: Answers, id: string) =>
  loadsOf(answers).find((load) => load.id === id) as Load;

/** A home in which each thing that may be measured is there. */
const everything: Answers = {
  ...answersOf('birch-street'),
  'fridge-count': 1,
  'freezer-count': 1,
  'heat-main': 'gas-furnace',
  'cool-main': 'central',
  'water-source': 'well',
  waste: 'septic-pump',
  sump: 'one',
  'freeze-risk': ['heat-tape'],
  'water-heater': 'gas-plug',
  'internet-kind': 'cable-fiber',
  'work-gear': 'several',
  'big-loads': ['washer', 'dishwasher', 'dehumidifier', 'aquarium', 'radon-fan'],
  'access-lifts': ['garage-door', 'stairlift'],
  'stairlift-battery': 'no',
  'medical-devices': ['oxygen-concentrator', 'ventilator', 'cpap', 'dialysis', 'suction'],
};
const other: Record<string, Answers> = {
  'heat-pump': { 'heat-main': 'heat-pump' },
  'room-cooler': { 'cool-main': 'room' },
  'mini-split': { 'cool-main': 'mini-split' },
};

describe('what a meter read', () => {
  const before = loadOf(everything, 'fridge');
  const measured = { ...everything, measured: ['fridge'], 'measured-fridge': 120 };

  test('takes the place of what is usual, as told and as narrow as the meter', () => {
    const { runningWatts, runningVa, startVa } = loadOf(measured, 'fridge');
    expect(before.runningWatts.source.kind).not.toBe('told');
    expect(runningWatts).toMatchObject({ value: 120, low: 114, high: 126 });
    expect(runningWatts.source).toMatchObject({ kind: 'told', question: 'measured-fridge' });
    // 120 W at the power factor of the table, 0.85.
    expect(runningVa.value).toBeCloseTo(120 / 0.85, 9);
    expect(startVa!.value).toBe(before.startVa!.value);
  });

  test('energy goes with the power, hours as before; and a measured day goes before that', () => {
    const { kwhPerDay } = loadOf(measured, 'fridge');
    expect(kwhPerDay.mild.value).toBeCloseTo((before.kwhPerDay.mild.value * 120) / 150, 9);
    const day = loadOf({ ...measured, 'measured-fridge-day': 1.1 }, 'fridge').kwhPerDay;
    expect(day.mild.value).toBe(1.1);
    expect(day.summer.value / day.mild.value).toBeCloseTo(
      before.kwhPerDay.summer.value / before.kwhPerDay.mild.value,
      9,
    );
  });

  test('a start is never below what runs', () => {
    const start = (va: number) =>
      loadOf({ ...measured, 'measured-fridge-start': va }, 'fridge').startVa!;
    expect(start(900)).toMatchObject({ value: 900, low: 900, high: 900 * 1.15 });
    expect(start(60).value).toBeCloseTo(120 / 0.85, 9);
  });

  test('a home that measured nothing has the same loads', () => {
    expect(loadsOf({ ...everything, measured: ['none'] })).toEqual(loadsOf(everything));
  });
});

describe('of a device for health and of a pump that keeps the house dry', () => {
  test.each([
    ['cpap', 'cpap', 30, 'cpap-watts', 60],
    ['sump', 'sump', 300, 'sump-hp', 0.5],
  ])('%s: less than is counted is said and not taken', (thing, id, read, asked, told) => {
    const home = { ...everything, [asked]: told };
    const counted = loadOf(home, id);
    const now = loadOf({ ...home, measured: [thing], [`measured-${thing}`]: read }, id);
    expect(counted.runningWatts.value).toBeGreaterThan(read);
    expect(now.runningWatts).toMatchObject({
      value: counted.runningWatts.value,
      high: counted.runningWatts.high,
    });
    expect(now.runningWatts.source.is).toMatchObject({ code: 'measured-less', read, unit: 'W' });
    expect(sayOrigin(now.runningWatts.source)).toContain(`; you measured ${read} W`);
    expect(now.kwhPerDay).toEqual(counted.kwhPerDay);
  });

  test('more than is counted is taken', () => {
    const now = loadOf({ ...everything, measured: ['cpap'], 'measured-cpap': 110 }, 'cpap');
    expect(now.runningWatts.value).toBe(110);
    expect(now.kwhPerDay.mild.value).toBeGreaterThan(
      loadOf(everything, 'cpap').kwhPerDay.mild.value,
    );
  });
});

test.each(Object.entries(measuredThings))('%s: each reading changes its load', (thing, of) => {
  const home = { ...everything, ...other[thing] };
  const before = loadsOf(home).find(({ id }) => of.loads.includes(id))!;
  expect(before, thing).toBeDefined();
  const after = (answers: Answers) => loadOf({ ...home, measured: [thing], ...answers }, before.id);
  const watts = Math.round(before.runningWatts.high * 1.3);
  expect(after({ [of.watts]: watts }).runningWatts.value).toBe(watts);
  if (of.start !== undefined) {
    const va = Math.round(before.startVa!.high * 1.3);
    expect(after({ [of.start]: va }).startVa!.value).toBe(va);
  }
  if (of.day !== undefined) expect(after({ [of.day]: 3.3 }).kwhPerDay.mild.value).toBe(3.3);
});
