import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { showDraft, showGlance } from '../../../src/commands/talk/show-draft';
import { aboutHours, glanceWords } from '../../../src/faces/glance-words';
import type { Answers } from '../../../src/interview/answers';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { draftMaker } from '../../../src/plan/draft/draft-of';
import { lastingToPrint } from '../../../src/plan/on-the-day/lasting-to-print';
import { figure, type Source } from '../../../src/quantity/figure';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';
import { answersOf } from '../../households/read-household';

const draftOf = draftMaker(interview);
const answers = answersOf('birch-street');
const routeOf = (changed: Answers) => draftOf({ ...answers, ...changed }).glance.route;

test('a first plan stands in the pane once enough is told, and not before', () => {
  expect(routeOf({})).toMatchObject({ isSource: true });
  const thinHomes: Answers[] = [
    {},
    { 'home-zip': '43004' },
    { 'must-run': ['fridge'], 'fridge-count': 1 },
  ];
  for (const thin of thinHomes) {
    const { glance } = draftOf(thin);
    expect(glance.route).toBeNull();
    expect(glance.missing.length).toBeGreaterThan(0);
    const words = glanceWords(showGlance(glance)).join(' ');
    expect(words).toContain('A first plan stands here once enough is told.');
    expect(words).not.toMatch(/\d (h|days?)\b|\$/);
  }
});

test('it moves with the answers: more that must run costs more or lasts less', () => {
  const few = routeOf({ 'must-run': ['fridge'] })!;
  const more = routeOf({ 'must-run': ['fridge', 'heat', 'well'], 'fridge-count': 3 })!;
  const hours = (route: typeof few) => route.hours?.value ?? Number.POSITIVE_INFINITY;
  expect(more.costUsd.value > few.costUsd.value || hours(more) < hours(few)).toBe(true);
});

test('the same answers give the same glance, whichever were asked about before', () => {
  const before = glanceWords(showGlance(draftOf(answers).glance));
  draftOf({ ...answers, 'home-zip': '99723' });
  expect(glanceWords(showGlance(draftOf(answers).glance))).toEqual(before);
});

test('hours in the pane carry their unit on both ends where these differ', () => {
  const plain = { kind: 'assumed' } as const;
  const hours = (low: number, value: number, source: Source = plain) =>
    aboutHours(figure({ low, value, high: value, unit: 'h', source }));
  expect(hours(12, 18)).toBe('about 12 to 18 h');
  expect(hours(33.4, 85.7)).toBe('about 33 h to 3 days 14 h');
  expect(hours(0.2, 86)).toBe('up to about 3 days 14 h');
  // Counted over few drawn years they are rougher.
  expect(hours(33, 86, { ...plain, ends: 'one-start-in-ten' })).toBe('about 32 h to 3 days 12 h');
});

/** A plain house that could spend some money and does not know its yard. */
const plainHouse: Answers = {
  'home-zip': '48911',
  'home-kind': 'house',
  'home-tenure': 'own',
  'heat-main': 'gas-furnace',
  'water-source': 'town',
  'must-run': ['fridge'],
  'goal-hours': 48,
  'goal-season': 'winter',
  'engine-place': 'not sure',
  'budget-now': 1500,
  'people-risk': ['none'],
  'medical-devices': ['none'],
};

test('where a place is not known, the pane says that the whole job would be possible if there is one', () => {
  const open = showDraft(draftOf(plainHouse));
  expect(glanceWords(open.glance)).toContainEqual(expect.stringMatching(/^No source of power yet/));
  expect(open.lines[0]).toContain(
    'The whole job would be possible if there is an open, level place',
  );
  const known = showDraft(draftOf({ ...plainHouse, 'engine-place': 'open-20ft' }));
  expect(known.lines.join(' ')).not.toContain('would be possible');
});

test('where fuel is still to be stored, the pane says how long it lasts with it, as the plan does', () => {
  const open = { ...plainHouse, 'engine-place': 'open-20ft' };
  const { stored, hours } = draftOf(open).glance.route!;
  const [line] = lastingToPrint(frozenPlan(open, '2026-11-25', 5)).slice(-1);
  expect(stored!.hours.value).toBeCloseTo(line!.likelyHours, 6);
  expect(stored!.hours.value).toBeGreaterThan(hours!.value);
  const says = glanceWords(showDraft(draftOf(open)).glance).join(' ');
  expect(says).toMatch(
    /It lasts about .+ with \d+ gal of fuel stored, (up to )?about .+ before that; you asked for 48 h\./,
  );
  expect(says).not.toContain('falls short');
});

test('where nothing is bought because of the money, the pane says so and from what price on it could be', () => {
  const poor = { ...plainHouse, 'engine-place': 'open-20ft', 'budget-now': 100 };
  const { route } = draftOf(poor).glance;
  expect(route!.isSource).toBe(false);
  expect(route!.sourceAboveUsd).toBeGreaterThan(100);
  // A size of that price is on the list of the plan.
  const { list } = frozenPlan({ ...poor, 'budget-now': 1500 }, '2026-11-25', 5).advice;
  expect(list.map(({ usd }) => usd)).toContain(route!.sourceAboveUsd);
  expect(glanceWords(showDraft(draftOf(poor)).glance)).toContainEqual(
    expect.stringMatching(
      /^Your money buys no source that helps here; the cheapest is about \$\d+\.$/,
    ),
  );
  // With enough money something is bought, and nothing of this is said.
  const { route: rich } = draftOf({ ...poor, 'budget-now': 9000 }).glance;
  expect(rich!.isSource).toBe(true);
  expect(rich!.sourceAboveUsd).toBe(null);
});

test('where the money buys no source, the plan says what a little more would buy', () => {
  const { waysOn, route } = frozenPlan(plainHouse, '2026-11-25', 5).advice;
  expect(route.kind).toBe('preparation');
  const { line, moreUsd } = waysOn!.littleMore!;
  expect(moreUsd).toBeLessThanOrEqual(0.25 * 1500);
  expect(line.usd).toBe(1500 + moreUsd);
  expect(line.hours!.likely).toBeGreaterThan(8);
  const page = planMarkdown(frozenPlan(plainHouse, '2026-11-25', 5), english).split(
    '# The details',
  )[0]!;
  expect(page).toMatch(
    /Nearer to it: \$[\d,]+ more \(\$[\d,]+ in all\) for the plug-in power pack/,
  );
});
