import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { readTried } from '../../../src/interview/what-if/read-tried';
import { TRIED_AS } from '../../../src/interview/what-if/tried-keys';
import { answersOf } from '../../households/read-household';

const answers = answersOf('mill-lane');
const read = (...pairs: string[]) => readTried(interview, answers, pairs);
const says = (...pairs: string[]) => {
  const one = read(...pairs);
  return one.ok ? 'taken' : one.says;
};
const tried = (...pairs: string[]) => {
  const one = read(...pairs);
  if (!one.ok) throw new Error(one.says);
  return one.tried;
};

test('a short word stands for a question that exists', () => {
  for (const id of Object.values(TRIED_AS))
    expect(
      interview.questions.some((question) => question.id === id),
      id,
    ).toBe(true);
});

test('values are read as the interview reads them', () => {
  expect(tried('goal=3 days').answers['goal-hours']).toBe(72);
  expect(tried('budget=$1,500').answers['budget-now']).toBe(1500);
  expect(tried('season=Summer').answers['goal-season']).toBe('summer');
  expect(tried('goal=not sure').answers['goal-hours']).toBe('not sure');
  expect(tried('home-zip=48911').answers['home-zip']).toBe('48911');
  expect(tried('must-run=fridge, lights').answers['must-run']).toEqual(['fridge', 'lights']);
});

test('one load less leaves the others as they are, and one more comes behind them', () => {
  const before = answers['must-run'] as string[];
  const without = tried('less=sump').answers['must-run'];
  expect(without).toEqual(before.filter((id) => id !== 'sump'));
  expect(tried('less=sump', 'more=sump').answers['must-run']).toHaveLength(before.length);
  expect(says('more=sump')).toContain('must keep running already');
});

test('a refill is two answers, and none takes both away', () => {
  const { answers: soon } = tried('refill=2');
  expect([soon['fuel-refill'], soon['fuel-refill-days']]).toEqual(['likely', 2]);
  expect(tried('refill=no').answers['fuel-refill-days']).toBeUndefined();
});

test('a size is tried and is no answer', () => {
  expect(tried('size=larger')).toEqual({ answers, size: 1 });
});

test('several things are tried together', () => {
  const both = tried('goal=48', 'season=both');
  expect([both.answers['goal-hours'], both.answers['goal-season']]).toEqual([48, 'both']);
});

test.each([
  ['goal', 'is not a pair'],
  ['=48', 'is not a pair'],
  ['gaol=48', 'Did you mean "goal"?'],
  ['goal-houres=48', 'Did you mean "goal-hours"?'],
  ['constructor=1', 'Nothing here is called'],
  ['__proto__=1', 'Nothing here is called'],
  ['goal=abc', 'We could not read "abc" as a number in hours'],
  ['goal=', 'Type a number in hours'],
  ['goal=-3', 'must be between'],
  ['goal=100000', 'must be between'],
  ['goal=12 kW', 'is in another unit'],
  ['goal=10-12', 'We could not read'],
  ['season=autumn', 'Type one of: winter, summer, both, not sure'],
  ['season=', 'Nothing is not an answer'],
  ['must-run=fridge,none', 'stands alone'],
  ['must-run=fridge,well', 'is not offered'],
  ['less=piano', 'Type one of'],
  ['size=3', 'is no step of size'],
  ['refill=soon', 'is no time of a refill'],
  ['home-name=oak', 'is nothing to try'],
  ['now-danger=gas', 'is nothing to try'],
  ['well-hp=1', 'is not asked of this home'],
])('%s gets a sentence that says what to do', (pair, part) => {
  expect(says(pair)).toContain(part);
  expect(says(pair)).toMatch(/[.?]$/);
});

test('one thing is not tried twice, whatever it is called', () => {
  expect(says('goal=24', 'goal-hours=48')).toContain('stands there twice');
});

test('what most homes do not have is marked', () => {
  const one = read('goal=300');
  expect(one.ok && one.things[0]!.unusual).toBe(true);
});
