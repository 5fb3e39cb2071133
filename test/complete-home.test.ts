import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { resolve } from '../src/interview/questions/resolve';
import { contradictions } from '../src/plan/contradictions';
import { homeFromAnswers } from '../src/plan/home-from-answers';
import { whyDraft } from '../src/plan/sureness/why-draft';
import { completeHome } from './complete-home';

const homes = Array.from({ length: 40 }, (_, n) => {
  const answers = completeHome(n + 1);
  return { answers, home: homeFromAnswers(interview, answers, '2026-11-25') };
});

describe('a complete home', () => {
  test('is the same for the same seed, and another for another', () => {
    expect(completeHome(7)).toEqual(homes[6]!.answers);
    expect(new Set(homes.map(({ answers }) => JSON.stringify(answers))).size).toBe(homes.length);
  });

  test('leaves nothing that would keep its plan a draft', () => {
    const why = homes.map(({ answers, home }) =>
      whyDraft(home, interview, contradictions(home, answers)).map((reason) => reason.id),
    );
    expect(why.filter((reasons) => reasons.length > 0)).toEqual([]);
  });

  test('answers what is asked of it, and nothing else', () => {
    for (const { answers } of homes) {
      const asked = [...resolve(interview.questions, answers, 'assume').keys()];
      expect(Object.keys(answers)).toEqual(asked);
    }
  });

  test('is of many sorts', () => {
    const met = (id: string) => new Set(homes.map(({ answers }) => `${answers[id]}`)).size;
    expect(met('heat-main')).toBeGreaterThan(6);
    expect(met('home-kind')).toBeGreaterThan(2);
    expect(met('engine-place')).toBeGreaterThan(2);
    expect(new Set(homes.map(({ home }) => home.lifeSupport))).toEqual(new Set(['yes', 'no']));
  });
});
