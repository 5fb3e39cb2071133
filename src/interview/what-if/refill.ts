import { formatQuantity } from '../../quantity/format-quantity';
import { type Answers, NOT_SURE } from '../answers';
import type { Interview } from '../questions/question';
import { whatIfWords } from './what-if-words';

/** Questions of a refill: whether one may be had, then in how many days. */
export const REFILL = 'fuel-refill';
export const REFILL_DAYS = 'fuel-refill-days';

export const withRefill = (answers: Answers, days: number): Answers => ({
  ...answers,
  [REFILL]: answers[REFILL] === 'sure' ? 'sure' : 'likely',
  [REFILL_DAYS]: days,
});

export function withoutRefill(answers: Answers): Answers {
  const { [REFILL_DAYS]: _, ...rest } = answers;
  return { ...rest, [REFILL]: 'no' };
}

/** "after 2 days", or that none is counted. */
export function sayRefill(interview: Interview, answers: Answers): string {
  const days = answers[REFILL_DAYS];
  const told = answers[REFILL];
  if (told !== 'sure' && told !== 'likely') return whatIfWords.noFuel;
  const question = interview.questions.find(({ id }) => id === REFILL_DAYS)!;
  const taken = days === undefined || days === NOT_SURE ? question.unsure.assume : days;
  return whatIfWords.after(typeof taken === 'number' ? formatQuantity(24 * taken, 'h') : NOT_SURE);
}
