import { describe, expect, test } from 'vitest';
import type { Answer } from '../../src/interview/answers';
import { begin } from '../../src/interview/begin';
import type { Event } from '../../src/interview/event';
import type { Key } from '../../src/interview/keys/key';
import { reduce } from '../../src/interview/reduce';
import type { Context, State } from '../../src/interview/state';
import { smallInterview } from '../faces/small-interview';

const context: Context = {
  interview: smallInterview,
  short: false,
  nameProblem: (name) => (name === 'taken' ? 'That name is taken.' : null),
  spareName: () => 'home-1',
};
const press = (name: Exclude<Key['name'], 'text'>): Event => ({ type: 'key', key: { name } });
const type = (text: string): Event => ({ type: 'key', key: { name: 'text', text } });
const answer = (value: Answer): Event => ({ type: 'answer', answer: value });

function run(events: readonly Event[], from: State = begin(context, {})): State {
  return events.reduce((state, event) => reduce(context, state, event), from);
}

const atName = run([answer(['none'])]);
const atWatts = run([answer(['none']), answer('kim'), answer('well')]);
const atWaste = run([answer(900)], atWatts);

/** The next sitting, from what the last one left behind, past the question about danger. */
function again({ answers, unfinished }: State): State {
  return run([answer(['none'])], begin(context, answers, unfinished));
}

describe('leaving at the name', () => {
  test('Ctrl+S takes the typed name in', () => {
    const state = run([type('oak'), press('ctrl-s')], atName);
    expect(state).toMatchObject({ ending: 'saved', answers: { 'home-name': 'oak' } });
  });

  test.each(['no/slash', 'taken'])('Ctrl+S says why "%s" cannot be, and stays', (name) => {
    const state = run([type(name), press('ctrl-s')], atName);
    expect(state).toMatchObject({ ending: null, at: 'home-name', field: { text: name } });
    expect(state.error).toMatch(/Nothing can be saved under this one/);
    expect(run([press('ctrl-c')], state).ending).toBe('interrupted');
  });

  test('Ctrl+C takes the typed name in too', () => {
    expect(run([type('oak'), press('ctrl-c')], atName).answers['home-name']).toBe('oak');
  });

  test('a danger that was named gets a file of its own', () => {
    const gone = run([answer(['gas']), press('down'), press('enter')]);
    expect(gone).toMatchObject({ ending: 'danger', answers: { 'home-name': 'home-1' } });
    const unsure = run([press('tab'), press('ctrl-s')]);
    expect(unsure.answers).toEqual({ 'now-danger': 'not sure', 'home-name': 'home-1' });
  });

  test('nothing typed and no danger is nothing to keep', () => {
    expect(run([press('ctrl-s')], atName).answers).toEqual({ 'now-danger': ['none'] });
    expect(run([press('ctrl-c')]).answers).toEqual({});
  });
});

describe('a number that was typed and not entered', () => {
  test('is the answer after Ctrl+S, when it can be one', () => {
    expect(run([type('900'), press('ctrl-s')], atWatts).answers['well-watts']).toBe(900);
  });

  test.each(['12', '7000'])('%s, impossible or unusual, stays in the field', (typed) => {
    const left = run([type(typed), press('ctrl-s')], atWatts);
    expect(left.ending).toBe('saved');
    expect(left.answers['well-watts']).toBeUndefined();
    const next = again(left);
    expect(next).toMatchObject({ at: 'well-watts', field: { text: typed } });
    expect(next.notice).toMatch(/began this before/);
  });

  test('is no answer after Ctrl+C, and stands in the field at the next sitting', () => {
    const left = run([type('90'), press('ctrl-c')], atWatts);
    expect(left.answers['well-watts']).toBeUndefined();
    const next = again(left);
    expect(next).toMatchObject({ at: 'well-watts', field: { text: '90' } });
    const entered = run([type('0'), press('enter')], next);
    expect(entered.answers['well-watts']).toBe(900);
    expect(entered).toMatchObject({ unfinished: {}, notice: null });
  });

  test('stands there again after Esc and on, and after a look at the list', () => {
    const back = run([type('90'), press('escape')], atWatts);
    expect(back.at).toBe('water-source');
    expect(run([answer('well')], back)).toMatchObject({ at: 'well-watts', field: { text: '90' } });
    const list = run([type('90'), { type: 'act', act: 'draft' }, press('escape')], atWatts);
    expect(list).toMatchObject({ view: 'ask', at: 'well-watts', field: { text: '90' } });
  });

  test('leads back one question at the next sitting too', () => {
    const next = again(run([press('ctrl-s')], atWaste));
    expect(next.at).toBe('waste');
    expect(run([press('escape')], next)).toMatchObject({ at: 'well-watts' });
    const twice = run([press('escape'), press('escape')], next);
    expect(twice.at).toBe('water-source');
    expect(run([answer('well'), answer(900)], twice).at).toBe('waste');
  });

  test('does not stand in for an answer that was given', () => {
    const changed = run([press('escape'), press('ctrl-u'), type('80'), press('ctrl-c')], atWaste);
    expect(changed.answers['well-watts']).toBe(900);
    expect(changed.unfinished).toEqual({ 'well-watts': '80' });
  });
});

describe('ticks that were set and not entered', () => {
  test.each(['ctrl-c', 'ctrl-s'] as const)('stand there after %s, and are no answer', (key) => {
    const left = run([type('2'), type(' '), press(key)], atWaste);
    expect(left.answers.waste).toBeUndefined();
    expect(again(left)).toMatchObject({ at: 'waste', ticked: ['septic'] });
  });

  test('of danger do not: it is asked afresh', () => {
    const left = run([type('1'), type(' '), press('ctrl-c')]);
    expect(begin(context, left.answers, left.unfinished).ticked).toEqual([]);
  });
});
