import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { changeAfterPlan } from '../../src/interview/after-plan';
import type { Answer } from '../../src/interview/answers';
import { begin } from '../../src/interview/begin';
import { end } from '../../src/interview/end';
import type { Key } from '../../src/interview/keys/key';
import { reduce } from '../../src/interview/reduce';
import { type Act, rowsOf } from '../../src/interview/rows';
import type { Context, State } from '../../src/interview/state';
import { answersOf } from '../households/read-household';

const context: Context = {
  interview,
  short: false,
  guided: true,
  nameProblem: () => null,
  spareName: () => 'home-1',
};
const answers = { ...answersOf('mill-lane'), 'now-danger': ['none'] };
/** As the interview was when its plan was written. */
const planned: State = {
  ...end(context, begin(context, answers), 'plan'),
  answers,
};
const give = (state: State, answer: Answer) => reduce(context, state, { type: 'answer', answer });
const act = (state: State, name: Act) => reduce(context, state, { type: 'act', act: name });
const press = (state: State, name: Exclude<Key['name'], 'text'>) =>
  reduce(context, state, { type: 'key', key: { name } });
const change = (...ask: string[]) => changeAfterPlan(context, planned, { ask });

describe('an answer changed after the plan', () => {
  test('is asked in full, with the answer it has', () => {
    const asked = change('goal-hours');
    expect(asked).toMatchObject({ view: 'ask', at: 'goal-hours', ending: null });
    expect(asked.field.text).toBe('24 h');
  });

  test('is in the file before it is kept, and the lines say so', () => {
    const compared = give(change('goal-hours'), 72);
    expect(compared.answers['goal-hours']).toBe(72);
    const said = rowsOf(context, compared).map((row) => ('label' in row ? row.label : ''));
    expect(said.find((label) => label.startsWith('Keep'))).toContain('in your file by now');
    expect(said.find((label) => label.startsWith('Save and stop'))).toMatch(/stays in your file/);
  });

  test('is laid beside the plan, with no line marked', () => {
    const compared = give(change('goal-hours'), 72);
    expect(compared).toMatchObject({ view: 'compare', row: -1 });
    expect(compared.changing!.before['goal-hours']).toBe(24);
    expect(rowsOf(context, compared).map((row) => (row.kind === 'act' ? row.act : ''))).toEqual([
      'keep',
      'drop',
      'change-more',
      'stop',
    ]);
    // An Enter too many keeps nothing.
    expect(press(compared, 'enter')).toMatchObject({ view: 'compare', ending: null });
  });

  test('kept, it leads to a new plan; dropped, to the answers of the old one', () => {
    const compared = give(change('goal-hours'), 72);
    const kept = act(compared, 'keep');
    expect([kept.ending, kept.answers['goal-hours']]).toEqual(['plan', 72]);
    const dropped = act(compared, 'drop');
    expect([dropped.ending, dropped.answers]).toEqual(['plan', answers]);
  });

  test('the same answer again changes nothing, and leads to the list', () => {
    const same = give(change('goal-hours'), 24);
    expect(same.view).toBe('check');
    expect(same.notice).toContain('Nothing changes');
  });

  test('questions it brings up are asked before both plans are compared', () => {
    const none = { ...planned, answers: { ...answers, 'fuel-refill': 'no' } };
    const { 'fuel-refill-days': _, ...without } = none.answers as Record<string, Answer>;
    const asked = changeAfterPlan(
      context,
      { ...none, answers: without },
      {
        ask: ['fuel-refill'],
      },
    );
    const days = give(asked, 'likely');
    expect(days).toMatchObject({ view: 'ask', at: 'fuel-refill-days' });
    expect(give(days, 2).view).toBe('compare');
  });

  test('several are asked one after the other; one that is no longer asked is passed over', () => {
    const first = change('fuel-refill', 'fuel-refill-days', 'goal-hours');
    const second = give(first, 'no');
    expect(second).toMatchObject({ view: 'ask', at: 'goal-hours' });
    expect(give(second, 48).view).toBe('compare');
  });

  test('off the list any answer can be chosen, and another after it', () => {
    const list = change();
    expect(list.view).toBe('check');
    const season = reduce(context, list, { type: 'open', question: 'goal-season' });
    const compared = give(season, 'both');
    expect(compared.view).toBe('compare');
    const again = reduce(context, act(compared, 'change-more'), {
      type: 'open',
      question: 'goal-hours',
    });
    const both = give(again, 48);
    expect(act(both, 'drop').answers).toEqual(answers);
    expect(both.changing!.before['goal-season']).toBe('winter');
  });

  test('Esc on the list is back to the plan; with something changed it is looked at first', () => {
    expect(press(change(), 'escape').ending).toBe('plan');
    const compared = give(change('goal-hours'), 72);
    const list = act(compared, 'change-more');
    expect(press(list, 'escape').view).toBe('compare');
    expect(act(list, 'write').view).toBe('compare');
  });

  test('what opens the way to a generator is read back before it is kept, and only where it changed', () => {
    const closed = { ...planned, answers: { ...answers, 'engine-place': 'none' } };
    const asked = changeAfterPlan(context, closed, {
      ask: ['engine-place'],
      tried: { 'engine-place': 'In the open' },
    });
    expect(asked.notice).toBe(
      'You tried: In the open. Nothing of it is filled in. To keep it, answer this.',
    );
    expect(asked.answers['engine-place']).toBe('none');
    const back = act(give(asked, 'open-20ft'), 'keep');
    expect(back).toMatchObject({ view: 'read-back', ending: null });
    expect(act(back, 'all-so').ending).toBe('plan');
    expect(act(give(change('goal-hours'), 48), 'keep').ending).toBe('plan');
  });

  test('a danger told then is acted on before anything else', () => {
    const asked = reduce(context, change(), { type: 'open', question: 'now-danger' });
    expect(give(asked, ['gas-smell']).view).toBe('act-now');
  });

  test('stopping keeps what was changed, as at any question', () => {
    const stopped = press(give(change('goal-hours'), 72), 'ctrl-s');
    expect([stopped.ending, stopped.answers['goal-hours']]).toEqual(['saved', 72]);
  });
});
