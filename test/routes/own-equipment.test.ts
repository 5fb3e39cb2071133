import { beforeAll, describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { advise } from '../../src/advice/advise';
import { widthsOf } from '../../src/home/build-home';
import { SyntheticYears } from '../../src/home/weather/synthetic-years';
import type { Answers } from '../../src/interview/answers';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { allKinds } from '../../src/routes/all-routes';
import type { Route } from '../../src/routes/route';

const YEARS = 5;

const base: Answers = {
  'people-count': 2,
  'medical-devices': ['none'],
  'goal-hours': 12,
  'goal-season': 'winter',
  'home-zip': '24477',
  'home-kind': 'house',
  'home-tenure': 'own',
  'heat-main': 'gas-furnace',
  'cool-main': 'none',
  'water-source': 'public',
  'fridge-count': 1,
  'internet-kind': 'cable',
  'must-run': ['heat', 'fridge', 'lights', 'internet', 'phones'],
  'nice-run': ['none'],
  'panel-kind': 'breakers',
  'panel-signs': ['none'],
  'main-amps': 200,
  'battery-place': 'attached-garage',
  'roof-face': 'south',
  'roof-area': 700,
  'roof-shade': 'little',
  'budget-now': 8000,
};

const owner: Answers = {
  ...base,
  'own-sources': ['home-battery', 'solar'],
  'battery-kwh': 10,
  'battery-kw': 5,
  'battery-kind': 'lfp',
  'battery-years': 2,
  'battery-backup': 'circuits',
  'battery-reserve': 100,
  'solar-kw': 8,
  'solar-in-outage': 'runs-house',
};

function weighed(answers: Answers) {
  const home = homeFromAnswers(interview, answers, '2026-11-25');
  const drawn = new SyntheticYears(home, YEARS);
  const kinds = allKinds(home, drawn, widthsOf(interview));
  return { routes: kinds.map(({ route }) => route), advice: advise(home, drawn, kinds) };
}
const own = (of: { routes: Route[] }) => of.routes.find((route) => route.kind === 'own-battery');

describe('a home with a battery and panels', () => {
  let has: ReturnType<typeof weighed>;
  beforeAll(() => {
    has = weighed(owner);
  });

  test('is told to use what it has before it buys', () => {
    expect(has.advice.route.kind).toBe('own-battery');
    expect(has.advice.route.costUsd.value).toBe(0);
    expect(has.advice.route.solarKw).toBe(8);
  });

  test('counts the sun on its roof: the same battery without panels lasts less long', () => {
    const dark = own(weighed({ ...owner, 'own-sources': ['home-battery'] }))!;
    expect(dark.solarKw).toBeNull();
    expect(dark.lasting.hours!.value).toBeLessThan(own(has)!.lasting.hours!.value);
  });

  test('counts it at its age: 10 kWh at 20 years hold less than at 2', () => {
    // 10 kWh x 0.9 x (1 - 0.02 x 20) x 0.96 for cells at 20 C; 1 - 0.02 x 5 at the planned five years. By hand.
    expect(own(weighed({ ...owner, 'battery-years': 20 }))!.usableKwh).toBeCloseTo(5.184, 6);
    expect(own(has)!.usableKwh).toBeCloseTo(7.776, 6);
  });

  test('asks for a backed-up panel where the battery ran nothing in an outage', () => {
    const bare = own(weighed({ ...owner, 'battery-backup': 'never-tried' }))!;
    expect(bare.verdict).toBe('works-if');
    expect(bare.parts.map((part) => part.equipmentClass)).toContain('backup-subpanel');
    expect(bare.costUsd.value).toBeGreaterThan(0);
  });

  test('asks for panels behind the battery where they went off with the grid', () => {
    const off = own(weighed({ ...owner, 'solar-in-outage': 'nothing' }))!;
    expect(off.parts.map((part) => part.equipmentClass)).toContain('solar-rewire');
  });

  test('asks for the whole charge to be kept where a fifth is kept now', () => {
    expect(own(has)!.ifs).toEqual([]);
    expect(own(weighed({ ...owner, 'battery-reserve': 20 }))!.ifs).toHaveLength(1);
  });

  test('needs less storage beside it: the battery that is there counts in a larger one', () => {
    const long: Answers = {
      'goal-hours': 96,
      'solar-in-outage': 'nothing',
      'own-sources': ['home-battery'],
    };
    const circuits = (answers: Answers) =>
      weighed(answers).routes.find((route) => route.kind === 'battery-circuits')!;
    const with10 = circuits({ ...owner, ...long });
    const without = circuits({ ...owner, ...long, 'own-sources': ['none'] });
    expect(with10.nameplateKwh!).toBeLessThan(without.nameplateKwh!);
    expect(with10.costUsd.value).toBeLessThan(without.costUsd.value);
  });

  describe('with a generator to refill it', () => {
    const more: Answers = { 'engine-place': 'open-20ft', operators: 'two', 'gasoline-gallons': 10 };
    const refilled = (changed: Answers = {}) =>
      weighed({ ...owner, ...more, ...changed }).routes.find(
        (route) => route.kind === 'battery-engine',
      )!;
    const bought = (changed: Answers = {}) =>
      refilled(changed)
        .parts.filter((part) => part.costUsd.value > 0)
        .map((part) => part.equipmentClass);

    test('it carries the nights and none is bought', () => {
      expect(refilled().usableKwh).toBeCloseTo(7.776, 6);
      expect(bought()).not.toContain('battery');
      expect(bought()).not.toContain('backup-subpanel');
      expect(bought({ 'own-sources': ['none'] })).toContain('battery');
    });

    test('one too small for a night gets a smaller one beside it', () => {
      const small = {
        'battery-kwh': 5,
        'must-run': ['heat', 'fridge', 'freezer', 'lights', 'well'],
      };
      const with5 = refilled({ ...small, 'freezer-count': 2 });
      const without = refilled({ ...small, 'freezer-count': 2, 'own-sources': ['solar'] });
      expect(with5.usableKwh!).toBeGreaterThan(5 * 0.9 * 0.9 * 0.96);
      expect(with5.nameplateKwh!).toBeLessThan(without.nameplateKwh!);
      expect(with5.parts.filter((part) => part.equipmentClass === 'battery')).toHaveLength(2);
    });

    test('the panels spare fuel by the likely count, and none by the careful one', () => {
      const dark = refilled({ 'own-sources': ['home-battery'] });
      expect(refilled().solarKw).toBe(8);
      expect(dark.solarKw).toBeNull();
      expect(refilled().fuel!.perDay.value).toBeLessThan(dark.fuel!.perDay.value);
      expect(refilled().fuel!.perDay.high).toBeCloseTo(dark.fuel!.perDay.high, 6);
    });
  });

  test('is never planned on a battery built at home', () => {
    expect(own(weighed({ ...owner, 'battery-kind': 'home-made' }))).toBeUndefined();
  });
});

test('a power pack that is there comes first, and only what it lacks is bought', () => {
  const pack = (more: Answers) =>
    weighed({ ...base, 'must-run': ['lights', 'internet', 'phones'], ...more }).routes.find(
      (route) => route.kind === 'power-pack',
    )!;
  const told: Answers = {
    'own-sources': ['power-pack'],
    'battery-kwh': 1,
    'battery-kw': 1,
    'battery-kind': 'lfp',
    'battery-years': 1,
  };
  const without = pack({ 'own-sources': ['none'] });
  const short = pack({ ...told, 'goal-hours': 4 });
  expect(short.costUsd.value).toBe(0);
  expect(short.nameplateKwh).toBe(1);
  expect(pack(told).costUsd.value).toBeLessThan(without.costUsd.value);
});

test('a pack that gives rough power is not planned on where a motor hangs on it', () => {
  const told: Answers = {
    ...base,
    'must-run': ['fridge', 'phones'],
    'goal-hours': 4,
    'own-sources': ['power-pack'],
    'battery-kwh': 2,
    'battery-kw': 2,
    'battery-kind': 'lfp',
    'battery-years': 1,
  };
  const price = (wave: string) =>
    weighed({ ...told, 'pack-wave': wave }).routes.find((route) => route.kind === 'power-pack')!
      .costUsd.value;
  expect(price('pure')).toBe(0);
  expect(price('modified')).toBeGreaterThan(0);
});
