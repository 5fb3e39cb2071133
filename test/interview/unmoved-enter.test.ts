import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { begin, show } from '../../src/interview/begin';
import { NO_ROW } from '../../src/interview/keys/no-row';
import { reduce } from '../../src/interview/reduce';
import type { Context, State } from '../../src/interview/state';

const context: Context = {
  interview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'my-home',
};
const start = begin(context, {});

function held(name: 'enter' | 'tab' | 'down', times: number, from: State): State {
  let state = from;
  for (let i = 0; i < times; i++) {
    state = reduce(context, state, { type: 'key', key: { name } });
  }
  return state;
}

describe('Enter, held, where nobody moved', () => {
  test('answers no question, and says what to do', () => {
    const wrong: string[] = [];
    for (const { id } of interview.questions) {
      const after = held('enter', 30, show(context, start, id));
      if (after.at !== id || Object.keys(after.answers).length > 0) wrong.push(id);
      else if (after.error === null) wrong.push(`${id} says nothing`);
    }
    expect(wrong).toEqual([]);
  });

  test('a question with lines starts with none marked, "not sure" neither', () => {
    for (const { id, choices } of interview.questions) {
      expect(show(context, start, id).row, id).toBe(choices === undefined ? 0 : NO_ROW);
    }
  });

  test('after a first answer, thirty more answer nothing', () => {
    const first = reduce(context, start, { type: 'answer', answer: ['none'] });
    const after = held('enter', 30, first);
    expect(after.answers).toEqual(first.answers);
  });

  test('writes no plan from the list of answers', () => {
    const list = reduce(context, start, { type: 'act', act: 'draft' });
    expect(held('enter', 30, list)).toMatchObject({ view: 'check', ending: null });
  });

  test('keeps an answer that was given before', () => {
    const answers = { 'now-danger': ['none'], 'co-alarm': 'some' };
    const again = show(context, { ...start, answers }, 'co-alarm');
    expect(held('enter', 1, again).answers).toEqual(answers);
  });

  test('moving or a digit marks a line, and then Enter answers', () => {
    const alarm = show(context, start, 'co-alarm');
    const [first, second] = interview.questions.find((q) => q.id === 'co-alarm')!.choices!;
    const down = held('enter', 1, held('down', 1, alarm));
    expect(down.answers['co-alarm']).toBe(first!.id);
    const two = reduce(context, alarm, { type: 'key', key: { name: 'text', text: '2' } });
    expect(held('enter', 1, two).answers['co-alarm']).toBe(second!.id);
  });
});

describe('an error', () => {
  const wrong = held('enter', 1, show(context, start, 'co-alarm'));

  test('goes away when the reader moves on', () => {
    expect(wrong.error).not.toBeNull();
    expect(held('down', 1, wrong).error).toBeNull();
    const digit = reduce(context, wrong, { type: 'key', key: { name: 'text', text: '2' } });
    expect(digit.error).toBeNull();
  });

  test('goes away when help is opened, and stays away when it is left', () => {
    for (const id of ['co-alarm', 'people-count']) {
      const refused = held('enter', 1, show(context, start, id));
      expect(refused.error, id).not.toBeNull();
      const help = reduce(context, refused, { type: 'act', act: 'help' });
      expect(help, id).toMatchObject({ view: 'help', error: null });
      const byKey = reduce(context, refused, { type: 'key', key: { name: 'text', text: '?' } });
      expect(byKey, id).toMatchObject({ view: 'help', error: null });
      const back = reduce(context, help, { type: 'key', key: { name: 'escape' } });
      expect(back, id).toMatchObject({ view: 'ask', error: null });
    }
  });
});
