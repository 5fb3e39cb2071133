import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { changeAfterPlan } from '../../src/interview/after-plan';
import type { Answer, Answers } from '../../src/interview/answers';
import { begin } from '../../src/interview/begin';
import { end } from '../../src/interview/end';
import { isMeasured } from '../../src/interview/measured-rows';
import { offered, questionAt, stillOpen } from '../../src/interview/questions/relevant';
import { reduce } from '../../src/interview/reduce';
import type { Context, State } from '../../src/interview/state';
import { answersOf } from '../households/read-household';

const context: Context = {
  interview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'home-1',
};
const told: Answers = { ...answersOf('mill-lane'), 'now-danger': ['none'], 'fridge-count': 1 };
const give = (state: State, answer: Answer) => reduce(context, state, { type: 'answer', answer });

describe('what was measured', () => {
  test('is asked of nobody by itself', () => {
    expect(told.measured).toBeUndefined();
    expect(stillOpen(context, told).filter(isMeasured)).toEqual([]);
    expect(stillOpen(context, {}).filter(isMeasured)).toEqual([]);
    // The last answer of a file leads to the list, not to the meter.
    const { 'who-works': last, ...before } = told;
    const asked = begin(context, before);
    const opened = reduce(context, asked, { type: 'open', question: 'who-works' });
    const done = give(opened, last!);
    expect(isMeasured({ topic: questionAt(context, done.at).topic })).toBe(false);
  });

  test('opened in the list it asks for each reading of what is ticked, and comes back to the list', () => {
    let state = give(
      reduce(context, begin(context, told), { type: 'open', question: 'measured' }),
      ['fridge'],
    );
    for (const [id, answer] of [
      ['measured-fridge', 120],
      ['measured-fridge-start', 'not sure'],
      ['measured-fridge-day', 1.3],
    ] as const) {
      expect(state).toMatchObject({ view: 'ask', at: id });
      state = give(state, answer);
    }
    expect(state.view).toBe('check');
    expect(state.answers).toMatchObject({ 'measured-fridge': 120, 'measured-fridge-day': 1.3 });
  });

  test('offers only what the home has', () => {
    const { 'freezer-count': _, ...bare } = told;
    const ids = (answers: Answers) =>
      offered(context, { answers }, questionAt(context, 'measured')).map(({ id }) => id);
    expect(ids({ ...bare, 'freezer-count': 0 })).not.toContain('freezer');
    expect(ids({ ...bare, 'freezer-count': 1 })).toContain('freezer');
  });

  test('typed with amps it is watts, and another unit is answered with what to type', () => {
    const at = (text: string) => {
      const opened = reduce(context, begin(context, { ...told, measured: ['fridge'] }), {
        type: 'open',
        question: 'measured-fridge',
      });
      return reduce(context, opened, { type: 'typed', text });
    };
    expect(at('1.5 A').answers['measured-fridge']).toBe(180);
    expect(at('3 days').error).toMatch(/watts/);
    expect(at('90000 W').error).toMatch(/2,000 W/);
  });

  test('after a plan it is laid beside the plan like any answer', () => {
    const planned: State = { ...end(context, begin(context, told), 'plan'), answers: told };
    const asked = changeAfterPlan(context, planned, { ask: ['measured'] });
    let state = give(asked, ['microwave']);
    expect(state).toMatchObject({ view: 'ask', at: 'measured-microwave' });
    state = give(state, 1400);
    expect(state.view).toBe('compare');
  });
});
