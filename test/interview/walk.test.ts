import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { printView } from '../../src/faces/lines/print-view';
import { understand } from '../../src/faces/lines/understand';
import { NOT_SURE } from '../../src/interview/answers';
import { begin, show } from '../../src/interview/begin';
import { reduce } from '../../src/interview/reduce';
import { rowsOf } from '../../src/interview/rows';
import type { Context, State } from '../../src/interview/state';
import { placeOf, walkIds, walkList } from '../../src/interview/walk';

const context: Context = {
  interview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'my-home',
};
const told = {
  'home-name': 'oak',
  'home-kind': 'house',
  'heat-main': 'heat-pump',
  'water-source': 'well',
};
const at = (id: string, answers: State['answers'] = told): State =>
  show(context, { ...begin(context, answers), answers }, id);
const act = (state: State, name: 'later' | 'found' | 'walk' | 'draft') =>
  reduce(context, state, { type: 'act', act: name });
const acts = (state: State) =>
  rowsOf(context, state).flatMap((row) => (row.kind === 'act' ? [row.act] : []));

describe('the list to look at', () => {
  test('takes a question that stands somewhere in the home, by its line, its key and its word', () => {
    expect(acts(at('main-amps'))).toContain('later');
    const [byLine, byKey] = [
      act(at('main-amps'), 'later'),
      reduce(context, at('main-amps'), { type: 'key', key: { name: 'later' } }),
    ];
    const word = understand(context, at('main-amps'), 'later');
    expect(word).toMatchObject({ event: { type: 'act', act: 'later' } });
    for (const { answers, notice } of [byLine, byKey]) {
      expect(answers['main-amps']).toBe(NOT_SURE);
      expect(notice).toContain('at the panel');
    }
    // What nobody can read off anything cannot be looked at.
    expect(acts(at('goal-hours'))).not.toContain('later');
    const same = reduce(context, at('goal-hours'), { type: 'key', key: { name: 'later' } });
    expect(same.answers).toEqual(told);
  });

  const answers = {
    ...told,
    'well-hp': NOT_SURE,
    'main-amps': NOT_SURE,
    'heat-pump-tons': NOT_SURE,
    'panel-bus': 200,
    'goal-hours': NOT_SURE,
  };

  test('stands in the order of a walk, and holds only what applies and was left', () => {
    expect(walkIds(context, answers)).toEqual(['main-amps', 'heat-pump-tons', 'well-hp']);
    expect(walkList(context, { ...answers, 'water-source': 'town' })).toHaveLength(2);
  });

  test('is shown by place, and asks just those in its order, then comes back', () => {
    const list = act(at('home-kind', answers), 'walk');
    const text = printView(context, list).join('\n');
    expect(text).toMatch(/panel[\s\S]*Main breaker[\s\S]*Heat pump size[\s\S]*lampkeeper form oak/);
    let state = act(list, 'found');
    const asked: string[] = [];
    for (const given of [200, NOT_SURE, 1]) {
      asked.push(state.at);
      state = reduce(context, state, { type: 'answer', answer: given });
    }
    expect(asked).toEqual(['main-amps', 'heat-pump-tons', 'well-hp']);
    expect(state).toMatchObject({ view: 'walk', walking: null });
    expect(walkIds(context, state.answers)).toEqual(['heat-pump-tons']);
  });

  test('Esc leads back to the list from each of them', () => {
    const state = act(act(at('home-kind', answers), 'walk'), 'found');
    const back = reduce(context, state, { type: 'key', key: { name: 'escape' } });
    expect(back).toMatchObject({ view: 'walk', walking: null, answers });
  });

  test('is reached from the list of answers while anything is on it', () => {
    const check = (of: State['answers']) => acts(act(at('home-kind', of), 'draft'));
    expect(check(answers)).toContain('walk');
    expect(check(told)).not.toContain('walk');
  });
});

test('what is read off a label stands at a place, and nothing about people or wishes does', () => {
  for (const { id, nameplate, topic } of interview.questions) {
    if (nameplate === true)
      expect({ id, place: placeOf(interview, id) }).not.toEqual({ id, place: null });
    if (['now', 'goal'].includes(topic)) expect(placeOf(interview, id)).toBeNull();
  }
});
