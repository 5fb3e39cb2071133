import { describe, expect, test } from 'vitest';
import type { Answers } from '../../src/interview/answers';
import { picturesOf } from '../../src/papers/pictures/of-plan/pictures-of';
import { oneRoomOf } from '../../src/plan/one-room';
import { LONGEST_PAUSE } from '../../src/routes/kinds/generator-blocks';
import { carriesAllMust } from '../../src/routes/must-carried';
import { runHours } from '../../src/tables/run-hours';
import { english } from '../../src/words/en';
import { frozenPlan } from '../frozen-plans';

/** A house with a furnace and a well where no fuel that may be kept lasts to the goal. */
const northHouse: Answers = {
  'home-zip': '04401',
  'home-kind': 'house',
  'home-tenure': 'own',
  'water-source': 'well',
  'heat-main': 'oil-furnace',
  'must-run': ['heat', 'well', 'fridge', 'freezer', 'lights', 'phones'],
  'goal-hours': 120,
  'goal-season': 'winter',
  'engine-place': 'open-20ft',
  'budget-now': 3000,
  'people-risk': ['none'],
  'medical-devices': ['none'],
};
const plan = (changed: Answers) => frozenPlan({ ...northHouse, ...changed }, '2026-11-25', 5);

describe('everything for a day on fuel that can be fetched again goes before a part of it for longer', () => {
  test('heat and water are carried for a day and more, not a refrigerator for five', () => {
    const { home, advice } = plan({});
    expect(advice.reason.code).toBe('nearest-all');
    expect(carriesAllMust(home, advice.route)).toBe(true);
    expect(advice.list.find((line) => line.route?.kind === 'engine-cords')!.carried.carried).toBe(
      4,
    );
  });

  test('where the money ends just below that, the plan says how little more it takes', () => {
    const { advice } = plan({ 'budget-now': 2400, 'budget-later': 0 });
    const { line, moreUsd } = advice.waysOn!.littleMore!;
    expect(line.carried).toEqual({ carried: 6, of: 6 });
    expect(moreUsd).toBeGreaterThan(0);
    expect(moreUsd).toBeLessThanOrEqual(0.25 * 2400);
    expect(line.usd).toBe(2400 + moreUsd);
  });

  test('a battery, which nobody can fetch again, gains nothing by it', () => {
    const batteries = plan({ 'budget-now': 40000 }).advice.list.filter(
      ({ route }) => route !== null && route.generator === null,
    );
    expect(batteries.length).toBeGreaterThan(0);
    for (const { value, hours } of batteries)
      if (value.long) expect(hours!.likely).toBeGreaterThanOrEqual(0.5 * 120);
  });
});

describe('a generator run by a timetable', () => {
  test('is told as a way on where its fuel does not last to the goal, with what stands still meanwhile', () => {
    const { advice } = plan({});
    const way = advice.waysOn!.timetable!;
    // By hand: gallons / (gallons a day in seven hours) x 24; the idle burn is that of 7 hours of 24.
    expect(way.hours).toBeGreaterThan(2 * advice.list[advice.advised!]!.hours!.likely);
    expect(way.hours).toBeLessThan((24 / 7) * advice.list[advice.advised!]!.hours!.likely);
    expect(way).toMatchObject({ coldFoodSafeHours: 4, roomCools: true, roomWarms: false });
    // USDA: a refrigerator kept shut is safe for about 4 hours; the longest pause is from 9 pm to 6 am.
    expect(LONGEST_PAUSE).toBe(9);
    const says = english.household.waysOn;
    expect(says.timetable(way)).toContain('(not where a cold room makes someone ill)');
    expect(says.timetable(way)).toContain('A shut refrigerator stays safe for 4 h only');
    expect(says.onFrontPage(advice.waysOn!, { names: [], heat: false, cool: false })).toContain(
      'Nearer to it: the generator run only from 6 to 9 am and 5 to 9 pm, so that 25 gal last about',
    );
  });

  test('is never told where something it carries must not stop', () => {
    const closing: Answers[] = [
      { 'medical-devices': ['cpap'] },
      { 'medical-devices': ['fridge-medicine'] },
      { waste: 'grinder', 'must-run': ['heat', 'well', 'fridge', 'waste'] },
      { 'people-risk': ['baby'] },
      { 'people-risk': ['none'], 'heat-cold': 'cold' },
      { 'people-risk': 'not sure' },
      { sump: 'one', 'must-run': ['heat', 'well', 'fridge', 'sump'] },
    ];
    const told = closing.map((one) => plan(one).advice.waysOn?.timetable ?? null);
    expect(told).toEqual(closing.map(() => null));
  });
});

describe('the note of the same timetable beside the route', () => {
  const notes = (changed: Answers) => {
    const { notes } = plan(changed).routes.find(({ kind }) => kind === 'engine-inlet')!;
    return notes.map(english.routeNote).join(' ');
  };

  test('says the same hours, and what to look at between them, as the way on does', () => {
    const way = plan({}).advice.waysOn!.timetable!;
    expect(way.runHours).toEqual(runHours);
    const says = notes({});
    expect(says).toContain('Run only from 6 to 9 am and 5 to 9 pm, it burns');
    for (const one of [/A shut refrigerator [^.]*\./, /The house cools [^.]*\./]) {
      const [sentence] = one.exec(english.household.waysOn.timetable(way))!;
      expect(says).toContain(sentence);
    }
    // Nothing is said of what is not carried, and of no winter where the goal is a summer.
    const summer = notes({ 'goal-season': 'summer', 'must-run': ['heat', 'well', 'lights'] });
    expect(summer).not.toContain('A shut refrigerator');
    expect(summer).not.toContain('The house cools');
  });

  test('and for what it must never be done: medicine that is kept cold, devices, drains', () => {
    const medicine = english.routeNote('no-timetable-for-medicine');
    expect(notes({})).not.toContain(medicine);
    expect(notes({ 'medical-devices': ['fridge-medicine'] })).toContain(medicine);
    // Nobody told: the careful branch.
    expect(notes({ 'medical-devices': 'not sure' })).toContain(medicine);
    expect(notes({ 'medical-devices': ['cpap'] })).toContain('never run the generator');
    const waste: Answers = { waste: 'grinder', 'must-run': ['heat', 'well', 'fridge', 'waste'] };
    expect(notes(waste)).toContain(english.routeNote('no-drain-between'));
  });
});

describe('one room in place of the whole home', () => {
  test('is a way on before anybody was asked about it, where it lasts much longer', () => {
    const { home, advice, assumptions } = plan({
      'home-zip': '33901',
      'heat-main': 'heat-pump',
      'cool-main': 'central',
      'water-source': 'town',
      'must-run': ['cool', 'fridge', 'freezer', 'lights', 'phones'],
      'goal-hours': 168,
      'goal-season': 'summer',
      'budget-now': 8000,
    });
    expect(carriesAllMust(home, advice.route)).toBe(true);
    const { oneRoom } = advice.waysOn!;
    expect(oneRoom).toMatchObject({ cools: true, heats: false });
    expect(oneRoom!.line.hours!.likely).toBeGreaterThan(2 * advice.route.lasting.hours!.value);
    // Nothing is taken for a question that was never put: the whole home counts.
    expect(oneRoomOf(home)).toBeNull();
    const taken = assumptions.filter(
      (one) => one.code === 'open-answer' && one.question === 'one-room',
    );
    expect(taken).toEqual([]);
  });
});

describe('gas where no power company reaches', () => {
  test('comes from no street: only a tank would feed a standby generator', () => {
    const far = plan({ 'home-kind': 'off-grid', 'heat-main': 'wood' });
    const standby = far.routes.find(({ kind }) => kind === 'standby-engine')!;
    expect(standby.stops.map(({ code }) => code)).toContain('gas-tank-unknown');
    const conditions = far.possibleIf.flatMap((one) => one.conditions.map(({ code }) => code));
    expect(conditions).toContain('gas-tank-unknown');
    expect(conditions.filter((code) => code === 'gas-unknown')).toEqual([]);
  });
});

describe('what nobody wished for is not bought', () => {
  test('without a word on what would be good to have, the size goes by what must run', () => {
    const untold = plan({});
    const none = plan({ 'nice-run': ['none'] });
    const comfort = plan({ 'nice-run': ['cool', 'cooking'], 'cool-main': 'central' });
    const costOf = ({ advice }: typeof untold) => advice.route.costUsd.value;
    expect(costOf(untold)).toBe(costOf(none));
    expect(untold.advice.route.power).toEqual(none.advice.route.power);
    expect(untold.home.loads.filter(({ rank }) => rank === 'good')).toEqual([]);
    expect(comfort.home.loads.some(({ rank }) => rank === 'good')).toBe(true);
  });
});

test('the picture of what each dollar buys says why the one advised stands lower', () => {
  const described = (changed: Answers) =>
    picturesOf(plan(changed), english).get('dollars')!.drawing.description;
  const why = 'The one advised carries all that must run; what stands higher carries a part of it';
  expect(described({})).toContain(why);
  expect(described({ 'goal-hours': 24 })).not.toContain(why);
});
