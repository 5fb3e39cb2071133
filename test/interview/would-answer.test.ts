import { expect, test } from 'vitest';
import type { Answer } from '../../src/interview/answers';
import { begin } from '../../src/interview/begin';
import type { Key } from '../../src/interview/keys/key';
import { reduce } from '../../src/interview/reduce';
import type { State } from '../../src/interview/state';
import { wouldAnswer } from '../../src/interview/would-answer';
import { guidedContext } from '../faces/small-interview';

const press = (state: State, key: Key) => reduce(guidedContext, state, { type: 'key', key });
const type = (state: State, text: string) => press(state, { name: 'text', text, pasted: false });
const answer = (state: State, given: Answer) =>
  reduce(guidedContext, state, { type: 'answer', answer: given });
const opened = answer(answer(begin(guidedContext, {}), ['none']), 'kim');
const at = (questionId: string) =>
  reduce(guidedContext, opened, {
    type: 'next',
    next: { code: 'ask', questionId, why: '', left: 3 },
  });

test('it is what Enter leaves, digit by digit, and nothing before there is an answer', () => {
  const zip = at('home-zip');
  expect(wouldAnswer(guidedContext, zip)).toBeNull();
  expect(wouldAnswer(guidedContext, type(zip, '4891'))).toBeNull();
  const whole = type(type(zip, '4891'), '1');
  const then = press(whole, { name: 'enter' });
  expect(then.view).toBe('wait');
  expect(wouldAnswer(guidedContext, whole)).toEqual(then.answers);
  expect(whole.answers['home-zip']).toBeUndefined();
});

test('of lines it is the marked one', () => {
  const water = at('water-source');
  expect(wouldAnswer(guidedContext, water)).toBeNull();
  const marked = press(water, { name: 'down' });
  expect(wouldAnswer(guidedContext, marked)).toEqual(press(marked, { name: 'enter' }).answers);
});

test('in the opening, in the written order and beside a question it is nothing', () => {
  const name = type(answer(begin(guidedContext, {}), ['none']), 'kim');
  expect(name.at).toBe('home-name');
  expect(wouldAnswer(guidedContext, name)).toBeNull();
  const typed = type(at('home-zip'), '48911');
  expect(wouldAnswer({ ...guidedContext, guided: false }, typed)).toBeNull();
  expect(wouldAnswer(guidedContext, { ...typed, view: 'help' })).toBeNull();
});
