import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { failedBefore } from '../../../src/plan/cautions/failed-before';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { willNotDo } from '../../../src/plan/will-not-do';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';
import { answersOf, planOf } from '../../households/read-household';

const homeWith = (failed: string[]) =>
  homeFromAnswers(
    interview,
    { ...answersOf('ridge-road'), 'outage-failed': failed, 'other-aims': ['quiet', 'clean-air'] },
    '2026-11-25',
  );

test('what went wrong before is named where the route carries nothing against it', () => {
  const home = homeWith(['no-water', 'food', 'medical']);
  const pump = home.loads.find((load) => load.restsOn.includes('water-source'))!.id;
  const food = home.loads.filter((load) => ['fridge', 'freezer-chest'].includes(load.id));
  const ids = food.map((load) => load.id);
  expect(failedBefore(home, { carries: ids })).toEqual(['no-water']);
  expect(failedBefore(home, { carries: [pump] })).toEqual(['food']);
  expect(failedBefore(home, { carries: [pump, ids[0]!] })).toEqual([]);
  expect(failedBefore(homeWith(['nothing']), { carries: [] })).toEqual([]);
});

test('it is said of the route advised, and so is what works against other aims', () => {
  const plan = planOf('ridge-road');
  const route = plan.routes.find((one) => one.kind === 'engine-cords')!;
  const said = willNotDo(
    homeWith(['no-water']),
    { ...plan.advice, route: { ...route, carries: [] } },
    null,
  );
  expect(said).toContainEqual({ code: 'failed-before', failed: 'no-water' });
  expect(said.filter(({ code }) => /^not-(quiet|clean-air)$/.test(code))).toHaveLength(2);
  const quiet = plan.routes.find((one) => one.kind === 'power-pack')!;
  const other = willNotDo(homeWith([]), { ...plan.advice, route: quiet }, null);
  expect(other.filter(({ code }) => /^not-(quiet|clean-air)$/.test(code))).toEqual([]);
});

test('the step about permits says what is left once the permit office was asked', () => {
  const answers = answersOf('ridge-road');
  const asked = { ...answers, permissions: ['permit-office-asked'] };
  const stepOf = (told: typeof answers) => {
    const { nextSteps, home } = frozenPlan(told, '2026-11-25', 3);
    return english.step(nextSteps.find(({ id }) => id === 'permits')!, home);
  };
  expect(stepOf(asked)).toMatch(/every permit it named/);
  expect(stepOf({ ...answers, permissions: ['none'] })).toMatch(/^Ask which permits/);
});
