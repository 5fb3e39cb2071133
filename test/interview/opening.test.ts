import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { type Answers, NOT_SURE } from '../../src/interview/answers';
import { begin } from '../../src/interview/begin';
import { questionAt } from '../../src/interview/questions/relevant';
import { reduce } from '../../src/interview/reduce';
import { rowsOf } from '../../src/interview/rows';
import type { Context, State } from '../../src/interview/state';
import { isCertainNext } from '../../src/interview/step';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { missingForAdvice } from '../../src/plan/sureness/floor-of-answers';
import { answersOf } from '../households/read-household';

const context: Context = {
  interview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'my-home',
};
const answer = (state: State, given: Answers[string], of = context): State =>
  reduce(of, state, { type: 'answer', answer: given });

/** Answer as this home does until the first plan stands; gives the ids asked on the way. */
function openingOf(told: Answers, of = context): { asked: string[]; state: State } {
  const asked: string[] = [];
  let state = begin(of, {});
  while (state.view === 'ask' && asked.length < 40) {
    asked.push(state.at);
    const given = state.at === 'now-danger' ? ['none'] : told[state.at];
    state = answer(state, given ?? (state.at === 'home-name' ? 'kim' : NOT_SURE), of);
  }
  return { asked, state };
}

const devices = questionAt(context, 'device-safe-hours').when;
/** Asked because a device was told. */
const brought = (id: string) =>
  JSON.stringify(questionAt(context, id).when) === JSON.stringify(devices);

describe('the opening', () => {
  const homes = ['birch-street', 'mill-lane', 'ridge-road', 'tower-six'];

  test.each(homes)('of %s is at most 12 questions, and a plan can be made of it', (name) => {
    const told = answersOf(name);
    const { asked, state } = openingOf(told);
    const own = asked.filter((id) => !['now-danger', 'home-name'].includes(id) && !brought(id));
    expect(own.length).toBeLessThanOrEqual(12);
    expect(state.view).toBe('first-plan');
    const home = homeFromAnswers(interview, state.answers, '2026-11-25');
    expect(missingForAdvice(home)).toEqual([]);
  });

  test('is all that the short talk asks, in the same order', () => {
    const told = answersOf('ridge-road');
    const short = { ...context, short: true };
    const [long, brief] = [openingOf(told), openingOf(told, short)];
    expect(brief.asked).toEqual(long.asked);
    const acts = (of: Context, { state }: { state: State }) =>
      rowsOf(of, state).flatMap((row) => (row.kind === 'act' ? [row.act] : []));
    expect(acts(context, long)).toEqual(['more', 'write', 'draft', 'stop']);
    expect(acts(short, brief)).toEqual(['write', 'draft', 'stop']);
  });

  test.each(['told', 'not told'])(
    'taken up again with what must run %s, the short talk stands at its end at once',
    (must) => {
      const told = answersOf('ridge-road');
      const file = must === 'told' ? told : { ...told, 'must-run': NOT_SURE };
      const short = { ...context, short: true, guided: true };
      const { state } = openingOf(file, short);
      const again = begin(short, state.answers);
      expect(again).toMatchObject({ view: 'ask', at: 'now-danger' });
      const safe = reduce(short, again, { type: 'answer', answer: ['none'] });
      expect(safe.view).toBe('first-plan');
      expect(safe.answers).toEqual(state.answers);
    },
  );

  test('holds who lives here, their devices and a place for a source, whatever is answered', () => {
    const { asked } = openingOf({});
    expect(asked.slice(0, 4)).toEqual([
      'now-danger',
      'home-name',
      'people-risk',
      'medical-devices',
    ]);
    expect(asked).toContain('engine-place');
  });

  test('its end answers nothing by itself, goes on to a question, and comes back', () => {
    const { state } = openingOf(answersOf('mill-lane'));
    const pressed = Array.from({ length: 30 }).reduce<State>(
      (at) => reduce(context, at, { type: 'key', key: { name: 'enter' } }),
      state,
    );
    expect(pressed).toMatchObject({ view: 'first-plan', answers: state.answers, ending: null });
    const on = reduce(context, state, { type: 'act', act: 'more' });
    expect(on.view).toBe('ask');
    expect(interview.opening).not.toContain(on.at);
    expect(reduce(context, state, { type: 'key', key: { name: 'escape' } })).toMatchObject({
      view: 'ask',
      at: state.at,
    });
  });
});

describe('what may be typed ahead', () => {
  const at = (id: string): State => ({ ...begin(context, {}), at: id });
  test('is the next question of the opening, unless the answer decides about it', () => {
    expect(isCertainNext(context, at('goal-hours'), at('goal-season'))).toBe(true);
    expect(isCertainNext(context, at('people-risk'), at('medical-devices'))).toBe(true);
    // A device brings questions with it, and what heats the home decides which lines come next.
    expect(isCertainNext(context, at('medical-devices'), at('home-zip'))).toBe(false);
    expect(isCertainNext(context, at('heat-main'), at('must-run'))).toBe(false);
    expect(isCertainNext(context, at('home-kind'), at('water-source'))).toBe(false);
    expect(isCertainNext(context, at('budget-now'), at('people-count'))).toBe(false);
  });
});
