import { describe, expect, test } from 'vitest';
import { planOf } from './households/read-household';
import { planCodes } from './plan-codes';
import type { Codes } from './plans/codes-in';
import { differences } from './plans/differences';

/** Every string in the codes, keys left out. */
function stringsIn(codes: Codes): string[] {
  if (typeof codes === 'string') return [codes];
  return typeof codes === 'object' && codes !== null ? Object.values(codes).flatMap(stringsIn) : [];
}

const plan = planOf('birch-street');
const codes = planCodes(plan);

describe('the codes of a plan', () => {
  test('hold no sentence', () => {
    for (const name of ['birch-street', 'tower-six', 'ridge-road', 'mill-lane']) {
      const said = stringsIn(planCodes(planOf(name)));
      expect(said.length, name).toBeGreaterThan(200);
      expect(said.filter((one) => one.split(/\s+/).length > 3)).toEqual([]);
    }
  });

  test('are the same for other words, and each load is known by its id', () => {
    const nextSteps = plan.nextSteps.map((step) => ({ ...step, how: 'Do something else.' }));
    expect(differences(codes, planCodes({ ...plan, nextSteps }))).toEqual([]);
    const renamed = plan.home.loads.map((load) => ({ ...load, name: 'Thing' }));
    const home = { ...plan.home, loads: renamed };
    expect(differences(codes, planCodes({ ...plan, home }))).toEqual([]);
  });

  test('differ where a caution, a verdict, a size, a price or the order changes', () => {
    const [first, second, ...rest] = plan.cautions;
    const changed = (part: object) =>
      differences(codes, planCodes({ ...plan, ...part })).join('; ');
    expect(changed({ cautions: [second, first, ...rest] })).toContain('cautions.0.0');
    expect(changed({ cautions: [first, ...rest] })).toContain('cautions');
    const routeWith = (part: object) => ({
      routes: plan.routes.map((route) =>
        route.kind === 'engine-inlet' ? { ...route, ...part } : route,
      ),
    });
    expect(changed(routeWith({ verdict: 'cannot' }))).toMatch(/verdict: "cannot", was "works/);
    expect(changed(routeWith({ usableKwh: 3 }))).toMatch(/usableKwh: 3, was null/);
    const dear = { ...plan.advice.route.costUsd, value: 1, low: 1 };
    expect(changed(routeWith({ costUsd: dear }))).toContain('costUsd.0: 1, was');
  });

  test('show a number that is none', () => {
    const outlook = {
      ...plan.outlook,
      ordinaryTimes: { ...plan.outlook.ordinaryTimes, value: NaN },
    };
    expect(differences(codes, planCodes({ ...plan, outlook })).join()).toContain('broken-nan');
  });
});
