import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { effectOf } from '../../src/advice/effect-of-answers';
import { whyNow } from '../../src/advice/why-now';
import { english } from '../../src/words/en';
import { bankOfFile } from '../bank-of-file';
import { answersOf } from '../households/read-household';

const bank = bankOfFile('2026-11-28');
const place = interview.questions.find(({ id }) => id === 'engine-place')!;

/** Why the place of a generator is asked of this home. */
function whyPlace(name: string) {
  const { 'engine-place': _, ...answers } = answersOf(name);
  return whyNow(bank.trialOf(answers), effectOf(answers, bank, place));
}

test('an answer that opens a kind of route weighs by the job it does first, and never by a few dollars', () => {
  const why = whyPlace('elm-row');
  // The two prices are $60 apart: no other choice of money.
  expect(why).toMatchObject({ code: 'opens-route', job: 'whole-for-more', usd: 0 });
  expect(english.whyNow(why)).toBe(
    'It decides whether a generator with cords is possible, and whether anything can do the whole job.',
  );
});

test('where the price moves by much that is said behind the job', () => {
  const why = whyPlace('birch-street');
  expect(why).toMatchObject({ code: 'opens-route', job: 'whole' });
  expect(english.whyNow(why)).toMatch(
    /is possible, which does the whole job: a difference of about \$[\d,]+\.$/,
  );
});

test('what stays possible or not says what is lost without it', () => {
  const lost = { code: 'closes-route', route: 'engine-inlet', job: 'less', usd: 900 } as const;
  expect(english.whyNow(lost)).toBe(
    'It decides whether a generator wired to the house stays possible; without it less of the job is done: a difference of about $900.',
  );
});
