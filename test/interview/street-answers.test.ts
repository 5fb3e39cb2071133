import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Answers } from '../../src/interview/answers';
import { begin } from '../../src/interview/begin';
import { end } from '../../src/interview/end';
import type { Context } from '../../src/interview/state';
import { streetAnswers, streetWords } from '../../src/interview/street-answers';
import { answersOf } from '../households/read-household';

const shared = new Set([...interview.street, ...interview.tariff]);

test('a street shares its place and its prices, and nothing of who lives there, their health or their use', () => {
  for (const id of [...interview.private.name, ...interview.private.people]) {
    expect(shared.has(id), id).toBe(false);
  }
  for (const { id, safety } of interview.questions) {
    if (safety === true) expect(shared.has(id), id).toBe(false);
  }
  const personal = [
    'bill-kwh',
    'bill-dollars',
    'bill-year-kwh',
    'bill-peak-kw',
    'budget-now',
    'quote-total',
  ];
  expect(personal.filter((id) => shared.has(id))).toEqual([]);
});

test('every id named is a question', () => {
  const known = new Set(interview.questions.map(({ id }) => id));
  expect([...shared].filter((id) => !known.has(id))).toEqual([]);
});

test('only what was told is taken over, and it is named', () => {
  const told: Answers = { ...answersOf('birch-street'), 'place-lowest': 'not sure' };
  const taken = streetAnswers(interview, told);
  expect(taken['home-zip']).toBe(told['home-zip']);
  expect(Object.keys(taken).every((id) => shared.has(id))).toBe(true);
  expect(taken['place-lowest']).toBeUndefined();
  expect(streetWords(interview, told, false)).toContain('ZIP code');
  expect(streetWords(interview, { 'home-zip': '48911' }, true)).toEqual([
    'ZIP code',
    'what power costs',
  ]);
  expect(streetWords(interview, { 'people-count': 4 }, false)).toEqual([]);
});

test('what was taken over is nothing to keep until something is told', () => {
  const context: Context = {
    interview,
    short: false,
    takenOver: ['home-zip'],
    nameProblem: () => null,
    spareName: () => 'my-home',
  };
  const begun = begin(context, { 'home-zip': '48911' });
  expect(end(context, begun, 'interrupted').answers['home-name']).toBeUndefined();
  const told = { ...begun, answers: { ...begun.answers, 'water-source': 'town' } };
  expect(end(context, told, 'interrupted').answers['home-name']).toBe('my-home');
});
