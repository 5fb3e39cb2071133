import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { resolve } from '../src/interview/questions/resolve';
import { contradictions } from '../src/plan/contradictions';
import { whyDraft } from '../src/plan/sureness/why-draft';
import { completeHome, likelyHome, makeUp } from './complete-home';
import { homeOfAnswers } from './home-of-answers';
import { likelyAnswerTo } from './likely-answer';
import { answerTo } from './random-answer';

const homes = Array.from({ length: 20 }, (_, n) => {
  const answers = completeHome(n + 1);
  return { answers, home: homeOfAnswers(answers, '2026-11-25') };
});

describe('a complete home', () => {
  test('is the same for the same seed, and another for another', () => {
    expect(makeUp(7, answerTo)).toEqual(homes[6]!.answers);
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

describe('a home drawn as households are', () => {
  const likely = Array.from({ length: 60 }, (_, n) => likelyHome(n + 1));
  const often = (id: string, choice: string) => {
    const asked = likely.filter((answers) => answers[id] !== undefined);
    return asked.filter((answers) => [answers[id]].flat().includes(choice)).length / asked.length;
  };
  // Two standard deviations of 60 draws of one in two.
  const near = (share: number) => ({ low: share - 0.13, high: share + 0.13 });

  test.each([
    ['home-kind', 'house', 0.62],
    ['heat-main', 'gas-furnace', 0.46],
    ['own-sources', 'none', 0.6],
    ['big-loads', 'washer', 0.85],
    ['medical-devices', 'none', 0.76],
  ])('answers %s with %s about as often as the shares say', (id, choice, share) => {
    expect(often(id, choice)).toBeGreaterThan(near(share).low);
    expect(often(id, choice)).toBeLessThan(near(share).high);
  });

  test('has numbers of which nine in ten are usual, within what is possible', () => {
    const { usual, possible } = interview.questions.find(({ id }) => id === 'goal-hours')!;
    const hours = likely.map((answers) => answers['goal-hours'] as number);
    const inside = hours.filter((one) => one >= usual![0] && one <= usual![1]).length;
    expect(inside / hours.length).toBeGreaterThan(0.8);
    expect(Math.min(...hours)).toBeGreaterThanOrEqual(possible![0]);
    expect(Math.max(...hours)).toBeLessThanOrEqual(possible![1]);
  });

  test('is complete, and the same for the same seed', () => {
    expect(makeUp(5, likelyAnswerTo)).toEqual(likely[4]);
    for (const answers of likely.slice(0, 10)) {
      const home = homeOfAnswers(answers, '2026-11-25');
      expect(whyDraft(home, interview, contradictions(home, answers))).toEqual([]);
    }
  });
});
