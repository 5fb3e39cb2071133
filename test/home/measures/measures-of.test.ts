import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Home } from '../../../src/home/home';
import { neverLessened } from '../../../src/home/loads/never-lessened';
import { livedHome } from '../../../src/home/measures/lived-home';
import { type Measure, measuresOf, thriftySum } from '../../../src/home/measures/measures-of';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { SOFT_START_SHARE } from '../../../src/routes/fit-power';
import { measureRow, measureTable } from '../../../src/tables/measures';
import { answersOf } from '../../households/read-household';
import { randomHome } from '../../random-home';

const made = (answers: Parameters<typeof homeFromAnswers>[1]) =>
  homeFromAnswers(interview, answers, '2026-11-25');
const names = ['tower-six', 'birch-street', 'mill-lane', 'ridge-road'];
const demos = names.map((name) => made(answersOf(name)));
const all: readonly (readonly [Home, readonly Measure[]])[] = [
  ...demos,
  ...Array.from({ length: 40 }, (_, seed) => made(randomHome(5000 + seed))),
].map((home) => [home, measuresOf(home)]);

const found = (home: Home, id: string) => measuresOf(home).find((one) => one.id === id);

describe('no measure burns what can kill', () => {
  // CPSC and CDC: no oven, grill, charcoal or unvented heater for warmth; NFPA: battery lights, no candles.
  const safeHeat = ['vented-stove', 'vented-heater', 'plug-in-heater', 'room-unit'];

  test('in the table heat comes by a pipe outdoors or a plug, and light by a battery', () => {
    for (const row of measureTable.rows) {
      if (row.gives === 'heat') expect(safeHeat).toContain(row.by);
      if (row.gives === 'light') expect(row.by).toBe('battery-light');
      expect(`${row.id} ${row.by}`).not.toMatch(/candle|oven|grill|charcoal|unvented|kerosene/);
    }
  });

  test('of 44 homes a stove warms only where one with a chimney or a pipe was told', () => {
    for (const [home, measures] of all) {
      const stove = measures.find((one) => one.id === 'stove-heat');
      if (stove === undefined) continue;
      expect(home.facts.told('heat-second')).toBe(true);
      expect(['wood-stove', 'vented-gas']).toContain(home.facts.value('heat-second'));
    }
  });

  test('an unvented heater or an oven told as second heat brings no stove', () => {
    const birch = {
      ...answersOf('birch-street'),
      'people-risk': ['none'],
      'heat-cold': 'neither',
      'medical-devices': ['none'],
      'freeze-risk': ['none'],
    };
    for (const heat of ['unvented', 'oven-or-grill', 'none', 'not sure']) {
      expect(found(made({ ...birch, 'heat-second': heat }), 'stove-heat')).toBeUndefined();
    }
    const stove = found(made({ ...birch, 'heat-second': 'wood-stove' }), 'stove-heat')!;
    expect(stove.saves.runningWatts).toBeGreaterThan(300);
    const pipes = made({ ...birch, 'heat-second': 'wood-stove', 'freeze-risk': ['crawl-pipes'] });
    expect(found(pipes, 'stove-heat')).toBeUndefined();
  });
});

test('of 44 homes every measure shown has an effect, and none touches what is never thinned', () => {
  for (const [home, measures] of all) {
    for (const { saves, loads } of measures) {
      const most = Math.max(
        saves.runningWatts,
        saves.startVa,
        200 * saves.kwhPerDay,
        200 * saves.packKwhPerDay,
      );
      expect(most).toBeGreaterThanOrEqual(1);
      for (const id of loads) {
        const load = home.loads.find((one) => one.id === id)!;
        if (id !== 'cpap') expect(neverLessened(load)).toBe(false);
      }
    }
  }
});

test('what all thrifty measures save together is what the two ways of living differ by', () => {
  for (const [home, measures] of all) {
    const { saves } = thriftySum(home, measures);
    if (saves === null) continue;
    const of = saves.of;
    const differ =
      home.demand[of].kwhPerDay[saves.season].value -
      livedHome(home, 'thrifty').demand[of].kwhPerDay[saves.season].value;
    expect(saves.kwhPerDay).toBeCloseTo(differ, 9);
  }
});

test('the 12-volt cord of the mask is worth its 8 h of a resting inverter, beside the other measures', () => {
  const cord = found(demos[0]!, 'dc-cord')!;
  // 8 h at 15 W less 3 W is 0.096 kWh.
  expect(cord.saves.packKwhPerDay).toBeCloseTo(0.096, 6);
  expect(cord.saves.kwhPerDay).toBe(0);
});

test('a home with nothing to thin is told nothing: no laundry where there is no washer', () => {
  expect(found(demos[0]!, 'laundry-later')).toBeUndefined();
  expect(found(demos[0]!, 'soft-starter')).toBeUndefined();
  expect(found(demos[0]!, 'stored-water')).toBeUndefined();
});

test('one room that was told is shown as counted already where heat is wanted, and nowhere else', () => {
  // On the sixth floor nobody asked for heat, so no warm room is promised.
  expect(found(demos[0]!, 'one-room')).toBeUndefined();
  const warm = made({ ...answersOf('tower-six'), 'must-run': ['heat', 'phones'] });
  expect(found(warm, 'one-room')).toMatchObject({ use: 'counted', saves: { of: 'must' } });
});

test('the soft starter of the table is the one the sizes are fitted with', () => {
  expect(measureRow('soft-starter').share![1]).toBe(SOFT_START_SHARE);
});

test('jugs for 4 people and 5 days are 80 gal: 60 fit in jugs and a drum, and the pump runs a quarter', () => {
  const answers = {
    'people-count': 4,
    'goal-hours': 120,
    'home-kind': 'house',
    'home-zip': '48911',
    'water-source': 'well',
    animals: ['none'],
    'medical-devices': ['none'],
    'must-run': ['well'],
  };
  const home = made(answers);
  expect(found(home, 'stored-water')).toMatchObject({ gallons: 60 });
  const kwh = (of: Home) => of.loads.find(({ id }) => id === 'well')?.kwhPerDay.winter.value;
  expect(kwh(livedHome(home, 'thrifty'))).toBeCloseTo(kwh(home)! / 4, 9);
  const less = made({ ...answers, 'goal-hours': 72 });
  expect(found(less, 'stored-water')).toMatchObject({ gallons: 48 });
  expect(kwh(livedHome(less, 'thrifty'))).toBeUndefined();
  // Animals outside drink more than jugs hold; nobody told of any is not "none".
  const { animals: _, ...untold } = answers;
  expect(found(made({ ...answers, animals: ['stay-outside'] }), 'stored-water')).toBeUndefined();
  expect(found(made(untold), 'stored-water')).toBeUndefined();
});

test('thrift costs what its measures on what must run cost: no lantern is bought to carry a laptop', () => {
  const laptop = made({ ...answersOf('mill-lane'), 'must-run': ['work'], 'must-also': ['none'] });
  expect(found(laptop, 'lantern')).toMatchObject({ use: 'thrifty' });
  expect(found(laptop, 'lantern')!.saves.of).not.toBe('must');
  const lit = made({ ...answersOf('mill-lane'), 'must-run': ['work', 'lights'] });
  const { value } = found(lit, 'lantern')!.costUsd;
  expect(value).toBeGreaterThan(0);
  const costOf = (home: Home) => thriftySum(home, measuresOf(home)).costUsd.value;
  expect(costOf(lit) - costOf(laptop)).toBe(value);
});
