import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';

const few = {
  'home-zip': '48911',
  'home-kind': 'house',
  'heat-main': 'gas-furnace',
  'must-run': ['heat', 'fridge'],
  'engine-place': 'not sure',
};

test('a step to find something out says what to look for, and not its title alone', () => {
  const { nextSteps, home } = frozenPlan(few, '2026-11-25', 4);
  const steps = nextSteps.filter((one) => one.id === 'find-out');
  expect(steps.length).toBeGreaterThan(1);
  for (const what of steps.map((one) => english.step(one, home))) {
    const asked = interview.questions.find(({ find }) => what.endsWith(find));
    expect(asked, what).toBeDefined();
    expect(what.toLowerCase()).toContain(asked!.says.toLowerCase());
  }
});
