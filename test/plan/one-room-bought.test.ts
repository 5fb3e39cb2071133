import { expect, test } from 'vitest';
import type { Answers } from '../../src/interview/answers';
import { frontLines } from '../../src/papers/household/front/front-page';
import { english } from '../../src/words/en';
import { frozenPlan } from '../frozen-plans';

/** A manufactured home in the desert with somebody over 65, and what the opening of a talk tells of it. */
const desert: Answers = {
  'now-danger': ['none'],
  'home-name': 'ash-court',
  'people-risk': ['over-65', 'long-illness'],
  'medical-devices': ['none'],
  'home-zip': '85032',
  'home-kind': 'manufactured',
  'home-tenure': 'own',
  'water-source': 'town',
  'heat-main': 'heat-pump',
  'must-run': ['fridge', 'lights', 'phones', 'cool'],
  'goal-hours': 72,
  'goal-season': 'summer',
  'engine-place': 'open-20ft',
  'budget-now': 1500,
};

const planWith = (more: Answers) => frozenPlan({ ...desert, ...more }, '2026-11-25', 5);

test('the unit of the one room stands on the list of what is bought and in the step that buys it', () => {
  const plan = planWith({ 'one-room': 'yes' });
  expect(plan.advice.route.carries).toContain('room-cooler');
  expect(plan.addOns.map(({ id }) => id)).toEqual(['room-cooler']);
  const buy = plan.nextSteps.find(({ id }) => id === 'buy');
  expect(buy).toMatchObject({ roomUnits: [{ id: 'room-cooler' }] });
  // Once: what is bought is not also something to price beside it.
  expect(plan.nextSteps.filter(({ id }) => id === 'price-beside')).toEqual([]);
  const [line] = frontLines(plan, english).filter((one) => /^What to buy/.test(one));
  expect(line).toMatch(/window air conditioner.*\$400/i);
  expect(line).not.toMatch(/Worth having beside it/);
});

test('where the cooling of the whole home is left out, one room within the money is a step before buying', () => {
  const asked: Answers[] = [{}, { 'one-room': 'no' }];
  for (const more of asked) {
    const plan = planWith(more);
    expect(plan.comfortLost.cool).not.toEqual([]);
    const step = plan.nextSteps.find(({ id }) => id === 'one-room');
    expect(step).toMatchObject({
      asked: 'one-room' in more,
      way: { keepsRoom: true, cools: true },
    });
    const [none] = frontLines(plan, english).filter((one) => /^Expect no cooling/.test(one));
    expect(none).toContain('One cool room is within your money');
  }
});

test('one room that the money does not buy is not said to be within it', () => {
  const plan = planWith({ 'budget-now': 800 });
  expect(plan.advice.waysOn?.oneRoom?.keepsRoom ?? false).toBe(false);
  expect(plan.nextSteps.map(({ id }) => id)).not.toContain('one-room');
  expect(frontLines(plan, english).join(' ')).not.toContain('within your money; "Ways on"');
});
