import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { NOT_SURE } from '../../src/interview/answers';
import { begin } from '../../src/interview/begin';
import type { Key } from '../../src/interview/keys/key';
import { relevant } from '../../src/interview/questions/relevant';
import { reduce } from '../../src/interview/reduce';
import { sayAnswer } from '../../src/interview/say-answer';
import type { Context, State } from '../../src/interview/state';
import { calmHome } from '../rules/calm-home';

const context: Context = {
  interview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'home-1',
};
const MONTHS = [1290, 1140, 980, 720, 610, 640, 700, 690, 620, 700, 900, 1200];
const withYear = { ...calmHome, 'bill-year-known': 'yes' };

const at = (): State => {
  const start = reduce(context, begin(context, withYear), { type: 'answer', answer: ['none'] });
  return reduce(context, start, { type: 'open', question: 'bill-year-kwh' });
};
const press = (state: State, ...keys: (Key | string)[]): State =>
  keys.reduce<State>((now, key) => {
    const name: Key = typeof key === 'string' ? { name: 'text', text: key } : key;
    return reduce(context, now, { type: 'key', key: name });
  }, state);
const enter: Key = { name: 'enter' };

describe('twelve months in one line', () => {
  test('are kept as numbers, said back with their sum, and shown again to be mended', () => {
    const done = press(at(), MONTHS.join(' '), enter);
    expect(done.answers['bill-year-kwh']).toEqual(MONTHS);
    const question = interview.questions.find((q) => q.id === 'bill-year-kwh')!;
    const sum = MONTHS.reduce((a, b) => a + b, 0);
    expect(sum).toBe(10_190);
    expect(sayAnswer(question, MONTHS)).toMatch(/^1,290, .* and 1,200 kWh, together 10,190 kWh$/);
    const again = reduce(context, done, { type: 'open', question: 'bill-year-kwh' });
    expect(again.field.text).toBe(MONTHS.join(' '));
    expect(press(again, enter).answers['bill-year-kwh']).toEqual(MONTHS);
  });

  test.each([
    ['1290 1140', /we read 2 numbers and need 12/],
    ['1290 11x0 980', /"11x0" as a number/],
    [
      MONTHS.join(' ').replace('980', '98000'),
      /Number 3 of "Use by month", 98,000 kWh, must be between 0 and 10,000 kWh/,
    ],
    ['', /type 12 numbers/],
  ])('%j is refused in one sentence, and what was typed stays', (typed, says) => {
    const refused = press(at(), typed, enter);
    expect(refused.error).toMatch(says);
    expect(refused.error!.match(/\.(\s|$)/g)!.length).toBeLessThanOrEqual(2);
    expect(refused.field.text).toBe(typed);
    expect(refused.at).toBe('bill-year-kwh');
    expect(refused.answers['bill-year-kwh']).toBeUndefined();
  });

  test('can be left with "not sure", and the mild month is asked instead', () => {
    const left = press(at(), { name: 'tab' });
    expect(left.answers['bill-year-kwh']).toBe(NOT_SURE);
    const asked = (answers: State['answers']) => relevant(context, answers).map((q) => q.id);
    const winter = { ...withYear, 'bill-season': 'winter' };
    expect(asked({ ...winter, 'bill-year-kwh': NOT_SURE })).toContain('bill-mild-kwh');
    expect(asked({ ...winter, 'bill-year-kwh': MONTHS })).not.toContain('bill-mild-kwh');
  });

  test('are asked only of those who say they have them, never with solar, off the grid or in a short consult', () => {
    const asked = (change: State['answers'], short = false) =>
      relevant({ ...context, short }, { ...withYear, ...change }).map((q) => q.id);
    expect(asked({})).toContain('bill-year-kwh');
    expect(asked({ 'bill-year-known': 'no' })).not.toContain('bill-year-kwh');
    expect(asked({ 'bill-year-known': NOT_SURE })).not.toContain('bill-year-kwh');
    expect(asked({ 'own-sources': ['solar'] })).not.toContain('bill-year-known');
    expect(asked({ 'own-sources': NOT_SURE })).not.toContain('bill-year-known');
    expect(asked({ 'home-kind': 'off-grid' })).not.toContain('bill-year-known');
    expect(asked({}, true)).not.toContain('bill-year-known');
  });
});
