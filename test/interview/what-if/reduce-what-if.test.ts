import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Key } from '../../../src/interview/keys/key';
import { knobsOf } from '../../../src/interview/what-if/knobs';
import { reduceWhatIf } from '../../../src/interview/what-if/reduce-what-if';
import {
  asksOf,
  beginWhatIf,
  movedKnobs,
  placeOfKnob,
  triedIn,
  type WhatIf,
} from '../../../src/interview/what-if/what-if-state';
import { answersOf } from '../../households/read-household';

const answers = answersOf('mill-lane');
const press = (state: WhatIf, ...names: Exclude<Key['name'], 'text'>[]) =>
  names.reduce((now, name) => reduceWhatIf(now, { type: 'key', key: { name } }), state);
const begun = beginWhatIf(interview, answers);
/** The state with this knob marked. */
const at = (id: string): WhatIf => ({
  ...begun,
  at: begun.knobs.findIndex((one) => one.id === id),
});

describe('what can be moved', () => {
  test('is goal, season, money, a load, the size, a place for a generator and a refill', () => {
    expect(begun.knobs.map(({ id }) => id)).toEqual([
      'goal',
      'season',
      'budget',
      'load',
      'size',
      'generator-place',
      'refill',
    ]);
  });

  test('stands where the answers have it, and says it as the list of answers does', () => {
    for (const name of ['mill-lane', 'birch-street', 'ridge-road', 'tower-six']) {
      for (const knob of knobsOf(interview, answersOf(name))) {
        expect(knob.places[knob.now], `${name} ${knob.id}`).toBeDefined();
        expect(new Set(knob.places.map(({ said }) => said)).size).toBe(knob.places.length);
      }
    }
    expect(begun.knobs[0]!.places[begun.knobs[0]!.now]!.said).toBe('24 h');
  });

  test('an apartment has no place for a generator to move', () => {
    const ids = knobsOf(interview, answersOf('tower-six')).map(({ id }) => id);
    expect(ids).not.toContain('generator-place');
  });

  test('an answer that is not sure is a place of its own', () => {
    const [goal] = knobsOf(interview, { ...answers, 'goal-hours': 'not sure' });
    expect(goal!.places[goal!.now]!.changes).toEqual({ 'goal-hours': 'not sure' });
    const days = { ...answers, 'fuel-refill': 'likely', 'fuel-refill-days': 'not sure' };
    const refill = knobsOf(interview, days).find(({ id }) => id === 'refill')!;
    expect(refill.places[refill.now]!.changes['fuel-refill-days']).toBe(3);
  });
});

describe('a key of what if', () => {
  test('Right and Left move what is marked, and the answers stay as they are', () => {
    const longer = press(at('goal'), 'right', 'right');
    expect(triedIn(longer).answers['goal-hours']).toBe(48);
    expect(longer.answers).toBe(answers);
    expect(triedIn(press(longer, 'left', 'left')).answers).toEqual(answers);
    expect(movedKnobs(press(longer, 'backspace'))).toEqual([]);
  });

  test('at its end a line goes no further, and says so', () => {
    const first = press(at('season'), 'left', 'left', 'left', 'left');
    expect(placeOfKnob(first, first.knobs[1]!)).toBe(0);
    expect(first.says).toBe('This line goes no further that way.');
    expect(press(first, 'down').says).toBeNull();
  });

  test('several lines moved are tried together, one size among them', () => {
    const both = press(
      { ...press(at('size'), 'right'), at: begun.knobs.findIndex(({ id }) => id === 'load') },
      'right',
    );
    const tried = triedIn(both);
    expect(tried.size).toBe(1);
    expect((tried.answers['must-run'] as string[]).length).toBe(
      (answers['must-run'] as string[]).length - 1,
    );
  });

  test('Up and Down go round', () => {
    expect(press(begun, 'up').at).toBe(begun.knobs.length - 1);
    expect(press(begun, 'up', 'down').at).toBe(0);
  });

  test('Esc is back to the plan, and nothing happens after it', () => {
    const left = press(begun, 'right', 'escape');
    expect(left.left).toBe('back');
    expect(press(left, 'enter', 'right')).toBe(left);
  });

  test('letters, a paste and Tab do nothing', () => {
    const typed = reduceWhatIf(begun, {
      type: 'key',
      key: { name: 'text', text: '48', pasted: true },
    });
    expect(typed).toEqual(begun);
    expect(press(begun, 'tab', 'ctrl-u', 'home')).toEqual(begun);
  });
});

describe('keeping what was moved', () => {
  test('asks the real questions, each once', () => {
    const moved = press({ ...press(at('refill'), 'right'), at: 0 }, 'right');
    expect(asksOf(moved)).toEqual(['goal-hours', 'fuel-refill', 'fuel-refill-days']);
    expect(press(moved, 'enter').left).toEqual({
      ask: asksOf(moved),
      tried: { 'goal-hours': '36 h', 'fuel-refill': expect.stringContaining('after') },
    });
  });

  test('of a place for a generator asks that safety question, and fills in nothing', () => {
    const none = press(at('generator-place'), 'left', 'enter');
    expect(none.left).toMatchObject({ ask: ['engine-place'] });
    expect(none.answers['engine-place']).toBe(answers['engine-place']);
  });

  test('of nothing, or of a size, stays and says why', () => {
    expect(press(begun, 'enter')).toMatchObject({
      left: null,
      says: expect.stringContaining('Nothing is moved'),
    });
    const sized = press(at('size'), 'right', 'enter');
    expect(sized.left).toBeNull();
    expect(sized.says).toContain('the plan chooses it');
  });
});
