import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { widthsOf } from '../../src/home/build-home';
import { SyntheticYears } from '../../src/home/weather/synthetic-years';
import type { Answers } from '../../src/interview/answers';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import type { ThingId } from '../../src/plan/what-is-there/thing';
import { whatIsThere } from '../../src/plan/what-is-there/what-is-there';
import { allRoutes } from '../../src/routes/all-routes';
import { english } from '../../src/words/en';

const base: Answers = {
  'people-count': 2,
  'medical-devices': ['none'],
  'goal-hours': 24,
  'goal-season': 'winter',
  'home-zip': '48911',
  'home-kind': 'house',
  'home-tenure': 'own',
  'heat-main': 'gas-furnace',
  'cool-main': 'none',
  'water-source': 'well',
  'fridge-count': 1,
  'must-run': ['fridge', 'lights', 'phones'],
  'panel-kind': 'main-breaker',
  'panel-signs': ['none'],
  'main-amps': 200,
  'engine-place': 'open-20ft',
  'co-alarm': 'every-floor',
  'battery-place': 'attached-garage',
  'flood-history': 'never',
  operators: 'one',
};

function thereWith(answers: Answers) {
  const home = homeFromAnswers(interview, { ...base, ...answers }, '2026-11-25');
  const routes = allRoutes(home, new SyntheticYears(home, 2), widthsOf(interview));
  return { routes, things: whatIsThere(home, routes) };
}

const ids = (answers: Answers) => thereWith(answers).things.map(({ id }) => id);
const priceOf = (answers: Answers, kind: string) =>
  thereWith(answers).routes.find((route) => route.kind === kind)!.costUsd.value;

describe('what is there already', () => {
  test('is nothing where nothing was told, and "not sure" is not told', () => {
    expect(ids({})).toEqual([]);
    expect(
      ids({ 'own-sources': 'not sure', cords: 'not sure', 'heat-second': 'not sure' }),
    ).toEqual([]);
  });

  test.each<[ThingId, Answers]>([
    ['generator', { 'own-sources': ['engine-portable'], 'engine-watts': 3000 }],
    [
      'pack',
      { 'own-sources': ['power-pack'], 'battery-kwh': 1, 'battery-kw': 1, 'battery-kind': 'lfp' },
    ],
    [
      'battery',
      {
        'own-sources': ['home-battery'],
        'battery-kwh': 10,
        'battery-kw': 5,
        'battery-kind': 'lfp',
      },
    ],
    ['solar', { 'own-sources': ['solar'], 'solar-kw': 6 }],
    [
      'vehicle-battery',
      { 'own-sources': ['ev-outlet'], 'vehicle-kind': 'battery-only', 'vehicle-kwh': 98 },
    ],
    ['vehicle-engine', { 'own-sources': ['ev-outlet'], 'vehicle-kind': 'not sure' }],
    ['switch', { 'transfer-existing': 'interlock' }],
    ['stove', { 'heat-second': 'wood-stove' }],
    ['water', { 'water-stored': 30 }],
    ['cords', { cords: 'heavy' }],
    ['thin-cords', { cords: 'light' }],
    ['ups', { 'own-sources': ['small-ups'] }],
  ])('names the %s that was told', (id, answers) => {
    expect(ids(answers)).toEqual([id]);
    const [thing] = thereWith(answers).things;
    expect(english.household.whatIsThere.one(thing!)).not.toMatch(/undefined|null|NaN/);
  });

  test('an unvented heater or an oven is no stove, and never stands among what helps', () => {
    expect(ids({ 'heat-second': 'unvented' })).toEqual([]);
    expect(ids({ 'heat-second': 'oven-or-grill' })).toEqual([]);
  });

  test('has its age where it was asked, and what makes it work', () => {
    const answers: Answers = {
      'own-sources': ['home-battery', 'solar'],
      'battery-kwh': 10,
      'battery-kw': 5,
      'battery-kind': 'lfp',
      'battery-years': 4,
      'battery-backup': 'nothing',
      'solar-kw': 6,
      'solar-in-outage': 'nothing',
    };
    const { things } = thereWith(answers);
    expect(things.find(({ id }) => id === 'battery')).toMatchObject({
      ageYears: 4,
      needs: ['backed-panel'],
      counts: true,
    });
    expect(things.find(({ id }) => id === 'solar')!.needs).toEqual(['island']);
    // Islanding of the roof that is there is a route with its price, not a new roof.
    const built = things.find(({ id }) => id === 'solar')!.builtOn.map(({ kind }) => kind);
    expect(built).toContain('battery-circuits');
  });

  test('an owned generator brings the inlet alone, priced', () => {
    const own: Answers = {
      'own-sources': ['engine-portable'],
      'engine-watts': 5000,
      'engine-volts': 'v240',
      'engine-fuel': 'gasoline',
      'gasoline-gallons': 10,
    };
    const { things } = thereWith(own);
    const inlet = things[0]!.builtOn.find(({ kind }) => kind === 'engine-inlet')!;
    expect(inlet.usd).toBeLessThan(priceOf({ 'gasoline-gallons': 10 }, 'engine-inlet'));
    expect(inlet.usd).toBeGreaterThan(500);
  });

  test('heavy cords and a switch that are there are not bought again, thin cords are', () => {
    const plain: Answers = { 'gasoline-gallons': 10 };
    const cords = priceOf(plain, 'engine-cords');
    expect(priceOf({ ...plain, cords: 'heavy' }, 'engine-cords')).toBe(cords - 120);
    expect(priceOf({ ...plain, cords: 'light' }, 'engine-cords')).toBe(cords);
    const inlet = priceOf(plain, 'engine-inlet');
    expect(priceOf({ ...plain, 'transfer-existing': 'interlock' }, 'engine-inlet')).toBeLessThan(
      inlet - 500,
    );
    for (const unknown of ['not-known', 'not sure', 'none']) {
      expect(priceOf({ ...plain, 'transfer-existing': unknown }, 'engine-inlet')).toBe(inlet);
    }
  });
});
