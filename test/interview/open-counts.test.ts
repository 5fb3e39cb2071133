import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { openWords } from '../../src/faces/check-words';
import { enoughTitle } from '../../src/faces/plan-so-far';
import { type Answers, NOT_SURE } from '../../src/interview/answers';
import { openIn } from '../../src/interview/questions/relevant';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { whyDraft } from '../../src/plan/sureness/why-draft';
import { sayDraftReasonShort } from '../../src/words/en/sureness/say-draft-reason';
import { answersOf } from '../households/read-household';

const context = { interview, short: false, nameProblem: () => null, spareName: () => 'a' };
/** Half of a file: what is left out was never asked, and two are not known. */
const all = Object.entries(answersOf('birch-street'));
const answers: Answers = {
  ...Object.fromEntries(all.filter((_, i) => i % 2 === 0 || i < 12)),
  'must-run': NOT_SURE,
  'heat-main': NOT_SURE,
};
const { unanswered, mattersMost, safety } = openIn(context, answers);
const ids = (of: readonly { readonly id: string }[]) => of.map(({ id }) => id);

test('the counts are of what they say', () => {
  expect(unanswered.filter(({ id }) => answers[id] !== undefined)).toEqual([]);
  expect(ids(mattersMost.open)).toEqual(expect.arrayContaining(['must-run', 'heat-main']));
  expect(ids(unanswered)).not.toContain('must-run');
  expect(mattersMost.of).toBeGreaterThan(mattersMost.open.length);
  expect(safety.every((one) => one.safety === true && unanswered.includes(one))).toBe(true);
  expect(safety.filter((one) => mattersMost.open.includes(one))).toEqual([]);
});

test('the first page, the list of answers and the end of the questions count by the same, and say of what', () => {
  const reasons = whyDraft(homeFromAnswers(interview, answers, '2026-11-25'), interview, []);
  const page = reasons.map(sayDraftReasonShort).join('; ');
  const { open, of } = mattersMost;
  expect(page).toContain(`${open.length} of the ${of} main answers are open`);
  expect(page).toContain(`${safety.length} other questions, about safety, were never asked`);
  expect(openWords(context, answers)).toContain(`About ${unanswered.length} questions are not`);
  const title = enoughTitle(context, { next: { code: 'enough', sharpen: 3, again: [] }, answers });
  expect(title).toContain(`3 of the ${unanswered.length} questions not answered yet`);
});
