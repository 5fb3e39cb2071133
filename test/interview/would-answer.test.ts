import { expect, test } from 'vitest';
import type { Answer } from '../../src/interview/answers';
import { begin } from '../../src/interview/begin';
import type { Key } from '../../src/interview/keys/key';
import { reduce } from '../../src/interview/reduce';
import type { Context, State } from '../../src/interview/state';
import { wouldAnswer } from '../../src/interview/would-answer';
import { smallInterview } from '../faces/small-interview';

const context: Context = {
  interview: smallInterview,
  short: false,
  guided: true,
  nameProblem: () => null,
  spareName: () => 'home-1',
};
const press = (state: State, key: Key) => reduce(context, state, { type: 'key', key });
const type = (state: State, text: string) => press(state, { name: 'text', text, pasted: false });
const answer = (state: State, given: Answer) =>
  reduce(context, state, { type: 'answer', answer: given });
const opened = answer(answer(begin(context, {}), ['none']), 'kim');
const at = (questionId: string) =>
  reduce(context, opened, { type: 'next', next: { code: 'ask', questionId, why: '', left: 3 } });

test('it is what Enter leaves, digit by digit, and nothing before there is an answer', () => {
  const zip = at('home-zip');
  expect(wouldAnswer(context, zip)).toBeNull();
  expect(wouldAnswer(context, type(zip, '4891'))).toBeNull();
  const whole = type(type(zip, '4891'), '1');
  const then = press(whole, { name: 'enter' });
  expect(then.view).toBe('wait');
  expect(wouldAnswer(context, whole)).toEqual(then.answers);
  expect(whole.answers['home-zip']).toBeUndefined();
});

test('of lines it is the marked one', () => {
  const water = at('water-source');
  expect(wouldAnswer(context, water)).toBeNull();
  const marked = press(water, { name: 'down' });
  expect(wouldAnswer(context, marked)).toEqual(press(marked, { name: 'enter' }).answers);
});

test('in the opening, in the written order and beside a question it is nothing', () => {
  const name = type(answer(begin(context, {}), ['none']), 'kim');
  expect(name.at).toBe('home-name');
  expect(wouldAnswer(context, name)).toBeNull();
  const typed = type(at('home-zip'), '48911');
  expect(wouldAnswer({ ...context, guided: false }, typed)).toBeNull();
  expect(wouldAnswer(context, { ...typed, view: 'help' })).toBeNull();
});
