import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { printView } from '../../src/faces/lines/print-view';
import { frameOf } from '../../src/faces/screen/frame-of';
import { glyphsFor } from '../../src/faces/screen/glyphs';
import { begin } from '../../src/interview/begin';
import { answersToReadBack } from '../../src/interview/read-back';
import { reduce } from '../../src/interview/reduce';
import type { Context, State } from '../../src/interview/state';
import { badToGood, noneLast } from './bad-to-good';

const context: Context = {
  interview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'my-home',
};
const unlocked = {
  'now-danger': ['none'],
  'home-name': 'kim',
  'engine-place': 'open-20ft',
  'gas-supply': 'town-gas',
};

function atList(answers: State['answers']): State {
  return { ...begin(context, answers), answers, view: 'check', row: 0 };
}

const write = (state: State) => reduce(context, state, { type: 'act', act: 'write' });

describe('lines of a question of safety', () => {
  test('stand from bad to good, so that the first one taken too quickly is the careful one', () => {
    for (const [id, order] of Object.entries(badToGood)) {
      const question = interview.questions.find((q) => q.id === id);
      expect(
        question?.choices?.map((choice) => choice.id),
        id,
      ).toEqual(order);
    }
  });

  test('every choice that opens a generator stands behind one that does not', () => {
    for (const [id, opens] of Object.entries(interview.readBack)) {
      const ids = interview.questions.find((q) => q.id === id)!.choices!.map((one) => one.id);
      expect(opens, id).not.toContain(ids[0]);
    }
  });

  test('"none of these" stands below what is wrong and who is frail', () => {
    for (const id of noneLast) {
      const { choices } = interview.questions.find((q) => q.id === id)!;
      const told = choices!.filter((choice) => choice.id !== 'prefer-not-to-say');
      expect(told.at(-1)!.id, id).toBe('none');
    }
  });
});

describe('before the plan', () => {
  test('the answers that open a generator are read back, in both faces', () => {
    const state = write(atList(unlocked));
    expect(state).toMatchObject({ view: 'read-back', ending: null });
    const frame = frameOf({
      context,
      state,
      draft: null,
      size: { columns: 60, rows: 30 },
      glyphs: glyphsFor({}),
    });
    const screen = frame.lines.map((line) => line.map((span) => span.text).join('')).join('\n');
    for (const text of [screen, printView(context, state).join('\n')]) {
      expect(text).toMatch(/is all of this so\?/);
      expect(text).toMatch(/20 feet or more/);
      expect(text).toMatch(/Piped gas from the street/);
    }
  });

  test('thirty Enters do not confirm them; going to the line does', () => {
    let state = write(atList(unlocked));
    for (let i = 0; i < 30; i++)
      state = reduce(context, state, { type: 'key', key: { name: 'enter' } });
    expect(state).toMatchObject({ view: 'read-back', ending: null });
    state = reduce(context, state, { type: 'key', key: { name: 'down' } });
    state = reduce(context, state, { type: 'key', key: { name: 'enter' } });
    expect(state.ending).toBe('plan');
  });

  test('Esc and the last line lead back to the list, where each can be changed', () => {
    const state = write(atList(unlocked));
    for (const event of [
      { type: 'key', key: { name: 'escape' } },
      { type: 'act', act: 'back' },
    ] as const) {
      expect(reduce(context, state, event)).toMatchObject({ view: 'check', ending: null });
    }
  });

  test('nothing is read back where no generator is open', () => {
    for (const place of ['none', 'garage-shed', 'not sure']) {
      expect(answersToReadBack(context, { ...unlocked, 'engine-place': place })).toEqual([]);
      expect(write(atList({ ...unlocked, 'engine-place': place })).ending).toBe('plan');
    }
  });
});
