import { describe, expect, test } from 'vitest';
import { leftWords } from '../../src/faces/place-words';
import { enoughTitle } from '../../src/faces/plan-so-far';
import { whyNowWords } from '../../src/faces/why-now-words';
import { type Answer, NOT_SURE } from '../../src/interview/answers';
import { begin } from '../../src/interview/begin';
import type { Key } from '../../src/interview/keys/key';
import type { NextStep } from '../../src/interview/next-step';
import { stillOpen } from '../../src/interview/questions/relevant';
import { reduce } from '../../src/interview/reduce';
import { rowsOf } from '../../src/interview/rows';
import type { State } from '../../src/interview/state';
import { guidedContext } from '../faces/small-interview';

const answer = (state: State, given: Answer) =>
  reduce(guidedContext, state, { type: 'answer', answer: given });
const found = (state: State, next: NextStep | null) =>
  reduce(guidedContext, state, { type: 'next', next });
const press = (state: State, name: Exclude<Key['name'], 'text'>) =>
  reduce(guidedContext, state, { type: 'key', key: { name } });
const ask = (questionId: string, left = 3): NextStep => ({
  code: 'ask',
  questionId,
  why: 'It decides whether there is a pump.',
  left,
});

/** The opening answered: what comes next is waited for. */
const waiting = answer(answer(begin(guidedContext, {}), ['none']), 'kim');

describe('after the opening', () => {
  test('the face is waited for, and its question comes with why now and how many more', () => {
    expect(waiting.view).toBe('wait');
    const state = found(waiting, ask('home-zip'));
    expect(state).toMatchObject({ view: 'ask', at: 'home-zip' });
    expect(whyNowWords(state)).toEqual(['Why now: it decides whether there is a pump.']);
    expect(leftWords(guidedContext, state)).toBe('a few more');
  });

  test('while it is looked for no key answers, and Esc, Ctrl+S and Ctrl+C are heard', () => {
    for (const name of ['enter', 'tab', 'up', 'down', 'page-down', 'home'] as const)
      expect(press(waiting, name)).toBe(waiting);
    expect(press(waiting, 'escape')).toMatchObject({ view: 'ask', at: 'home-name' });
    expect(press(waiting, 'ctrl-s').ending).toBe('saved');
    expect(press(waiting, 'ctrl-c').ending).toBe('interrupted');
  });

  test('back leads to the question before, and forward again to the one left', () => {
    const zip = found(waiting, ask('home-zip'));
    const goal = found(answer(zip, '48911'), ask('goal-hours', 2));
    const back = press(goal, 'escape');
    expect(back).toMatchObject({ view: 'ask', at: 'home-zip' });
    expect(answer(back, '48912')).toMatchObject({ view: 'ask', at: 'goal-hours' });
  });

  test('the count falls, whatever the face counts', () => {
    const first = found(waiting, ask('home-zip', 5));
    const second = found(answer(first, '48911'), ask('goal-hours', 9));
    expect(leftWords(guidedContext, first)).toBe('at least 4 more');
    expect(leftWords(guidedContext, second)).toBe('at least 4 more');
  });

  test('before it is looked nothing is counted that will hardly be asked', () => {
    const opened = { 'home-name': 'kim', 'water-source': 'well' };
    expect(leftWords(guidedContext, begin(guidedContext, opened))).toBe('');
    const inOpening = begin(guidedContext, {});
    expect(leftWords(guidedContext, inOpening)).toBe('about 1 more to a first plan');
  });

  test('where it cannot be worked out, the written order goes on', () => {
    expect(found(waiting, null)).toMatchObject({ view: 'ask', at: 'water-source' });
  });

  test('when nothing would change what to buy it says so, and the rest may be asked in its order', () => {
    const state = found(waiting, { code: 'enough', sharpen: 11, again: [] });
    const left = stillOpen(guidedContext, state.answers).length;
    expect(enoughTitle(guidedContext, state)).toBe(
      `Nothing we could still ask would change what to buy. 11 of the ${left} questions not answered yet would sharpen the figures.`,
    );
    const acts = rowsOf(guidedContext, state).map((row) => (row.kind === 'act' ? row.act : ''));
    expect(acts).toEqual(['write', 'rest', 'draft', 'stop']);
    let pressed = state;
    for (let i = 0; i < 30; i++) pressed = press(pressed, 'enter');
    expect(pressed).toMatchObject({ view: 'enough', ending: null });
    const rest = reduce(guidedContext, state, { type: 'act', act: 'rest' });
    expect(rest).toMatchObject({ view: 'ask', at: 'water-source' });
    expect(answer(rest, 'town')).toMatchObject({ view: 'ask', at: 'waste' });
  });

  test('what was not sure and nothing can be advised without comes once more before the end, and not a third time', () => {
    const why = 'Without it there can be no plan.';
    const enough: NextStep = {
      code: 'enough',
      sharpen: 0,
      again: [{ questionId: 'home-zip', why }],
    };
    const unsure = answer(found(waiting, ask('home-zip')), NOT_SURE);
    const again = found(answer(found(unsure, ask('goal-hours')), 24), enough);
    expect(again).toMatchObject({ view: 'ask', at: 'home-zip' });
    expect(whyNowWords(again)).toEqual(['Why now: without it there can be no plan.']);
    const back = press(again, 'escape');
    expect(back).toMatchObject({ view: 'ask', at: 'goal-hours' });
    expect(answer(back, 48)).toMatchObject({ view: 'ask', at: 'home-zip' });
    const stillUnsure = found(press(again, 'tab'), enough);
    expect(stillUnsure).toMatchObject({ view: 'enough', ending: null });
    const told = found(answer(again, '48911'), { ...enough, again: [] });
    expect(told).toMatchObject({ view: 'enough', answers: { 'home-zip': '48911' } });
  });
});
