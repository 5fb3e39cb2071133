import { describe, expect, test } from 'vitest';
import { sayRoutes } from '../../src/papers/household/details/say-routes';
import { isOpen, onlyUnknown } from '../../src/routes/stops/stop';
import { english } from '../../src/words/en';
import { frozenPlan } from '../frozen-plans';
import { answersOf } from '../households/read-household';

const ASKED_LATER = ['engine-place', 'battery-place', 'roof-face', 'home-tenure', 'own-sources'];
const all = answersOf('birch-street');
const some = Object.fromEntries(Object.entries(all).filter(([id]) => !ASKED_LATER.includes(id)));

describe('what nobody was asked is never called impossible', () => {
  const plan = frozenPlan(some, '2026-11-25', 3);
  const said = sayRoutes(plan, english).join('\n\n');
  const part = (title: string) => said.split(`${title}\n\n`)[1]?.split('\n\n')[0] ?? '';
  const stopped = plan.routes.filter((route) => route.verdict === 'cannot');

  test('a route closed by missing answers alone stands under "not known yet"', () => {
    expect(stopped.length).toBeGreaterThan(3);
    for (const route of stopped) {
      expect(
        part('Not possible here:').includes(english.routeTitle(route.called)),
        route.kind,
      ).toBe(!onlyUnknown(route.stops));
      expect(
        part('Not known yet, for want of an answer:').includes(english.routeTitle(route.called)),
      ).toBe(onlyUnknown(route.stops));
    }
    expect(stopped.filter((route) => onlyUnknown(route.stops)).length).toBeGreaterThan(2);
  });

  test('and none of its reasons says that there is none', () => {
    for (const stop of stopped.flatMap((route) => route.stops))
      if (isOpen(stop)) expect(english.stop(stop)).not.toMatch(/there is no|you rent|not yours/);
  });

  test('"none" told is not possible here', () => {
    const told = frozenPlan({ ...some, 'battery-place': 'nowhere' }, '2026-11-25', 3);
    const battery = told.routes.find((route) => route.kind === 'battery-whole')!;
    expect(onlyUnknown(battery.stops)).toBe(false);
  });
});
