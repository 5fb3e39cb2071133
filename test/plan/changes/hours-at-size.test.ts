import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { trials } from '../../../src/advice/trial';
import { hoursAtSize } from '../../../src/plan/changes/hours-at-size';
import { answersOf } from '../../households/read-household';

const trialOf = trials(interview, '2026-11-25');
const routes = ['mill-lane', 'birch-street', 'ridge-road'].flatMap((name) => {
  const { home, routes } = trialOf(answersOf(name));
  return routes
    .filter(({ verdict, generator }) => verdict !== 'cannot' && generator !== null)
    .map((route) => ({ name: `${name} ${route.kind}`, home, route }));
});
const alone = routes.filter(({ route }) => route.usableKwh === null);

test('at the size it has, a route burns and lasts just as it was sized', () => {
  expect(alone.length).toBeGreaterThan(4);
  for (const { name, home, route } of alone) {
    const same = hoursAtSize(home, route, route.generator!.ratedKw)!;
    for (const end of ['low', 'value', 'high'] as const) {
      expect(same.fuel!.perDay[end], `${name} ${end}`).toBeCloseTo(route.fuel!.perDay[end], 9);
      expect(same.lasting.hours?.[end], `${name} ${end}`).toEqual(
        route.lasting.hours === null ? undefined : expect.closeTo(route.lasting.hours[end], 6),
      );
    }
    expect(same.lasting.reachesGoal, name).toBe(route.lasting.reachesGoal);
  }
});

test('a larger generator idles more, and the same fuel lasts less long; a smaller one longer', () => {
  for (const { name, home, route } of alone.filter(({ route }) => route.lasting.hours !== null)) {
    const at = (times: number) =>
      hoursAtSize(home, route, times * route.generator!.ratedKw)!.lasting.hours!;
    expect(at(1.5).value, name).toBeLessThan(at(1).value);
    expect(at(1.5).low, name).toBeLessThan(at(1).low);
    expect(at(0.9).value, name).toBeGreaterThan(at(1).value);
  }
});

test('beside a battery nothing is said', () => {
  for (const { home, route } of routes.filter(({ route }) => route.usableKwh !== null)) {
    expect(hoursAtSize(home, route, route.generator!.ratedKw)).toBeNull();
  }
});
