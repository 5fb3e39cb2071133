import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { draftAll } from '../../../src/commands/talk/draft-all';
import { type Answers, NOT_SURE } from '../../../src/interview/answers';
import { resolve } from '../../../src/interview/questions/resolve';
import { answersOf } from '../../households/read-household';

const all = draftAll(null, '2026-11-28');

/** With "not sure" wherever a question applies and nothing is told: nothing is left to ask. */
function asked(home: Answers): Answers {
  const applies = [...resolve(interview.questions, home, 'assume').keys()];
  return { ...Object.fromEntries(applies.map((id) => [id, NOT_SURE])), ...home };
}

const again = (home: Answers) => {
  const next = all.next(asked(home));
  if (next.code !== 'enough') throw new Error(`asks ${next.questionId}`);
  return next.again;
};

test('what must run and was not sure is put once more, with one sentence on why', () => {
  const home = answersOf('tower-six');
  expect(again(home)).toEqual([]);
  expect(again({ ...home, 'must-run': NOT_SURE })).toEqual([
    {
      questionId: 'must-run',
      why: 'Without it there can be no plan. Tell what you know so far; you can change it at any time.',
    },
  ]);
});

test('so is the heating, behind it', () => {
  const home = { ...answersOf('mill-lane'), 'must-run': NOT_SURE, 'heat-main': NOT_SURE };
  expect(again(home).map(({ questionId }) => questionId)).toEqual(['must-run', 'heat-main']);
});
