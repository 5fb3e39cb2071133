import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { draftMaker } from '../../src/plan/draft/draft-of';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { english } from '../../src/words/en';
import { frozenPlan } from '../frozen-plans';
import { answersOf } from '../households/read-household';

const AS_OF = '2026-11-25';
const devices = ['oxygen', 'ventilator', 'cpap', 'dialysis'] as const;
const choiceOf = {
  oxygen: 'oxygen-concentrator',
  ventilator: 'ventilator',
  cpap: 'cpap',
  dialysis: 'dialysis',
};
const draftOf = draftMaker(interview);
const inPane = (id: string, answers: Record<string, unknown>) =>
  draftOf(answers as never).loads.find((load) => load.id === id)!.runningWatts;

describe.each(devices)('%s', (device) => {
  const id = choiceOf[device];

  test('counts the same before its power is asked as after "not sure"', () => {
    const begun = { 'medical-devices': [id] };
    const before = inPane(id, begun);
    const after = inPane(id, { ...begun, [`${device}-watts`]: 'not sure' });
    expect([before.low, before.value, before.high]).toEqual([after.low, after.value, after.high]);
  });

  test.each([
    ['power told', { [`${device}-watts`]: 45 }],
    ['not sure', { [`${device}-watts`]: 'not sure' }],
    ['hours told', { [`${device}-hours`]: 6 }],
    ['both told', { [`${device}-watts`]: 45, [`${device}-hours`]: 6 }],
  ])('has one figure in pane and plan: %s', (_, more) => {
    const answers = { ...answersOf('birch-street'), 'medical-devices': [id], ...more } as never;
    const load = homeFromAnswers(interview, answers, AS_OF).loads.find((one) => one.id === id)!;
    expect(inPane(id, answers)).toEqual(load.runningWatts);
    const told = (more as Record<string, unknown>)[`${device}-hours`];
    if (told === 6) {
      expect(load.kwhPerDay.winter.value).toBeCloseTo((6 * load.runningWatts.value) / 1000, 9);
    }
  });
});

test('the load table of the paper shows the power told, and no other watts beside the name', () => {
  const answers = {
    ...answersOf('birch-street'),
    'medical-devices': ['cpap'],
    'cpap-watts': 45,
    'cpap-hours': 6,
  };
  const text = planMarkdown(frozenPlan(answers as never, AS_OF, 5), english);
  const watts = text
    .split('\n')
    .filter(
      (line) =>
        line.startsWith('| CPAP |') ||
        line.startsWith('- CPAP: while it runs') ||
        line.includes('CPAP power'),
    )
    .flatMap((line) => line.match(/[\d,]+ W\b/g) ?? []);
  expect(watts).toEqual(['45 W']);
});
