import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { widthsOf } from '../../src/home/build-home';
import { SyntheticYears } from '../../src/home/weather/synthetic-years';
import { isSource } from '../../src/kinds/ask-traits';
import { type RouteKind, routeKinds } from '../../src/kinds/route-kind';
import { traitsOf } from '../../src/kinds/route-traits';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { allRoutes } from '../../src/routes/all-routes';
import { answersOf } from '../households/read-household';

const demo = ['ridge-road', 'tower-six', 'birch-street', 'mill-lane'].map(answersOf);
const owner = { 'own-sources': ['home-battery'], 'battery-kwh': 10, 'battery-backup': 'circuits' };
const vehicle = { 'own-sources': ['ev-outlet'], 'vehicle-kwh': 100, 'vehicle-miles': 20 };
const homes = [
  ...demo,
  ...demo.flatMap((home) => [
    { ...home, ...owner },
    { ...home, ...vehicle },
  ]),
];

const routes = homes.flatMap((answers) => {
  const home = homeFromAnswers(interview, answers, '2026-11-25');
  return allRoutes(home, new SyntheticYears(home, 1), widthsOf(interview));
});

describe.each(routeKinds)('%s', (kind: RouteKind) => {
  const here = routes.filter((route) => route.kind === kind);
  const working = here.filter((route) => route.verdict !== 'cannot');

  test('works in some of these homes: add one to the list in which a new route does', () => {
    expect(working.length).toBeGreaterThan(0);
  });

  test('has one title, and no other route has it', () => {
    const titles = new Set(here.map((route) => route.called));
    const others = routes.filter((route) => route.kind !== kind).map((route) => route.called);
    expect([...titles].filter((title) => others.includes(title))).toEqual([]);
  });

  test('has parts with a price, or owned ones: give it `parts` out of routes/costs.ts', () => {
    for (const route of working) {
      expect(route.parts.length).toBeGreaterThan(0);
      for (const part of route.parts) {
        const { costUsd } = part;
        expect(costUsd.source.kind === 'told' || costUsd.value > 0, part.equipmentClass).toBe(true);
      }
    }
  });

  test('says what it carries and its power, as far as its traits make it a source', () => {
    for (const route of working) {
      expect(route.carries.length > 0, 'give it `carries`').toBe(isSource(traitsOf[kind]));
      expect(route.power !== null, 'give it `power`').toBe(isSource(traitsOf[kind]));
    }
  });

  test('has the size, the fuel and the panels its traits speak of', () => {
    const { battery, generator, roofSolar } = traitsOf[kind];
    for (const route of working) {
      expect(route.nameplateKwh !== null, 'nameplateKwh beside trait battery').toBe(
        battery !== 'none',
      );
      expect(route.fuel !== null, 'fuel beside trait generator').toBe(generator !== 'none');
      if (roofSolar) expect(route.solarKw, 'solarKw beside trait roofSolar').not.toBeNull();
    }
  });
});

test('a quote is asked for by kinds of route: a misspelt choice of quote-kind is never used', () => {
  const choices = interview.questions.find((one) => one.id === 'quote-kind')!.choices!;
  const strange = choices
    .map((one) => one.id)
    .filter((id) => !routeKinds.includes(id as RouteKind));
  expect(strange).toEqual(['none']);
});
