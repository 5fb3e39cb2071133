import { marked } from 'marked';
import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { planData } from '../../../src/papers/plan-file/plan-data';
import { planSchema } from '../../../src/papers/plan-file/plan-schema';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';
import { answersOf } from '../../households/read-household';
import { planCodes } from '../../plan-codes';

const ruled = { 'home-tenure': 'association', 'association-rule': ['quiet-hours'] };
const planWith = (words?: string) => {
  const answers = { ...answersOf('mill-lane'), ...ruled };
  return frozenPlan(
    words === undefined ? answers : { ...answers, 'association-words': words },
    '2026-11-25',
    2,
  );
};
const stepOf = (plan: ReturnType<typeof planWith>) =>
  plan.nextSteps.find((step) => step.id === 'ask-association');

test('a rule of the association is brought to it in the words that were copied', () => {
  const words = 'No generator may run between 10 pm and 7 am.';
  const plan = planWith(words);
  expect(stepOf(plan)?.told).toBe(words);
  expect(planMarkdown(plan, english)).toContain(`You copied: "${words}"`);
  const data = planSchema.parse(planData(plan, english));
  expect(data.nextSteps.find((step) => step.id === 'ask-association')?.told).toBe(words);
  expect(stepOf(planWith())).toBeUndefined();
});

test('nothing is read out of it: any words give the same plan', () => {
  const codes = (words: string) => planCodes(planWith(words));
  expect(codes('No generator outdoors. Nothing electrical. $1. 3 kW. 110 volts.')).toEqual(
    codes('Anything goes.'),
  );
});

test('a reader of the summary obeys nothing in it', () => {
  const page = planMarkdown(
    planWith('**No** [noise](http://x.org) www.x.org a@x.org <b>at</b> all | "ever"'),
    english,
  );
  const html = marked.parse(page) as string;
  const line = html.split('\n').find((one) => one.includes('You copied'))!;
  expect(line).not.toMatch(/<(strong|a|b|em|code)\b/);
  expect(line).toContain('&lt;b&gt;at&lt;/b&gt; all');
});

test('it is asked where an association has a rule, and is among what is private', () => {
  expect(interview.private.place).toContain('association-words');
  const { when } = interview.questions.find(({ id }) => id === 'association-words')!;
  expect(JSON.stringify(when)).toContain('association-rule');
});
