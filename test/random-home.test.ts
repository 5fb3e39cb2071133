import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { type Answers, NOT_SURE } from '../src/interview/answers';
import { outside } from '../src/interview/check-answer';
import type { Choice, Question } from '../src/interview/questions/question';
import { resolve } from '../src/interview/questions/resolve';
import { restsOn } from '../src/interview/questions/rests-on';
import { randomHome } from './random-home';

const homes = Array.from({ length: 1500 }, (_, seed) => randomHome(seed + 1));

/** Why these answers could not have come out of the interview. */
function faultsOf(answers: Answers): string[] {
  const known = resolve(interview.questions, answers, 'assume');
  return Object.entries(answers).flatMap(([id, answer]) => {
    const question = interview.questions.find((q) => q.id === id)!;
    if (!known.has(id)) return [`${id} is not asked of this home`];
    if (answer === NOT_SURE) return [];
    return [answer].flat().flatMap((one) => faultOf(question, one));
  });
}

function faultOf(question: Question, one: string | number): string[] {
  if (typeof one === 'number') {
    const why = outside(question, one);
    return why === null ? [] : [why];
  }
  const ids = question.choices?.map((c) => c.id);
  return ids === undefined || ids.includes(one) ? [] : [`${question.id} has no choice ${one}`];
}

describe('a random home', () => {
  test('is the same for the same seed, and another for another', () => {
    expect(randomHome(7)).toEqual(randomHome(7));
    expect(new Set(homes.map((home) => JSON.stringify(home))).size).toBe(homes.length);
  });

  test('holds only answers the interview could have taken down', () => {
    expect(
      homes.flatMap((home, n) => faultsOf(home).map((why) => `seed ${n + 1}: ${why}`)),
    ).toEqual([]);
  });

  test('is told for the most part, and not sure and unasked here and there', () => {
    const all = homes.flatMap((home) => [...resolve(interview.questions, home, 'assume').values()]);
    const share = (how: string) => all.filter((one) => one.how === how).length / all.length;
    expect(share('told')).toBeGreaterThan(0.7);
    expect(share('unsure')).toBeGreaterThan(0.05);
    expect(share('unasked')).toBeGreaterThan(0.02);
  });

  test('meets every question and every choice in some of the homes', () => {
    const met = new Set(
      homes.flatMap((home) =>
        Object.entries(home).flatMap(([id, answer]) =>
          [answer].flat().map((one) => (typeof one === 'number' ? id : `${id} ${one}`)),
        ),
      ),
    );
    // A talk asks in another order; by that of the bank, a line that waits for a later question is never offered.
    const later = ({ id }: Question) =>
      interview.questions.slice(interview.questions.findIndex((one) => one.id === id) + 1);
    const inTime = (question: Question, choice: Choice) =>
      !later(question).some(({ id }) => restsOn(choice.when, id));
    const meets = (question: Question) =>
      question.choices?.filter((c) => inTime(question, c)).map((c) => `${question.id} ${c.id}`) ??
      (['zip', 'name', 'text'].includes(question.kind) ? [] : [question.id]);
    expect(interview.questions.flatMap(meets).filter((one) => !met.has(one))).toEqual([]);
  });
});
