import { describe, expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import interview from '#compiled/questions.js';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { planData } from '../../../src/papers/plan-file/plan-data';
import { planSchema } from '../../../src/papers/plan-file/plan-schema';
import { dangerToldIn } from '../../../src/plan/cautions/danger-told';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

const answers = { 'now-danger': ['power-off', 'gas-smell', 'fallen-wire'] };
const calm = planOf('birch-street');
const plan = { ...calm, danger: dangerToldIn(interview, answers) };

test('no danger told is none, nor is "none" or "not sure"', () => {
  for (const told of [undefined, ['none'], 'not sure']) {
    expect(dangerToldIn(interview, told === undefined ? {} : { 'now-danger': told })).toBeNull();
  }
  expect(calm.danger).toBeNull();
  expect(planData(calm, english)).not.toHaveProperty('danger');
  expect(planMarkdown(calm, english)).not.toMatch(/Danger now/);
});

describe('a paper made while dangers are told', () => {
  test('opens with every one of them, the deadliest first, and with what to do, before the job', () => {
    const text = planMarkdown(plan, english);
    const [title, opening] = text.split('\n\n');
    expect(title).toMatch(/^# /);
    expect(opening).toMatch(
      /^\*\*Danger now\. You told us: a smell of gas.*; a wire down outside; the power is off\./,
    );
    expect(text.indexOf('- Leave now')).toBeGreaterThan(0);
    for (const later of ['The job:', 'What to buy:', 'DRAFT', 'As of'])
      if (text.includes(later)) expect(text.indexOf(later)).toBeGreaterThan(text.indexOf('911'));
    const opened = text.slice(0, text.indexOf('As of'));
    expect(opened).not.toMatch(/run a generator|switch off|fridge/i);
  });

  test('the plan file says the same before the name, and keeps its form', () => {
    const data = planSchema.parse(parse(stringify(planData(plan, english))));
    expect(Object.keys(data).indexOf('danger')).toBeLessThan(Object.keys(data).indexOf('name'));
    expect(data.danger!.told.map((one) => one.id)).toEqual([
      'gas-smell',
      'fallen-wire',
      'power-off',
    ]);
    expect(data.danger!.firstOfAll[0]).toMatch(/^Leave now by a side away from the fallen wire/);
  });
});

test('a plan made from answers that tell a danger carries it', () => {
  const made = planOf('birch-street', { 'now-danger': ['unwell'] });
  expect(made.danger!.told[0]!.id).toBe('unwell');
  expect(planMarkdown(made, english).split('\n\n')[1]).toMatch(/Danger now/);
});
