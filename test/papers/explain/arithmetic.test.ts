import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { explainText, figureList } from '../../../src/papers/explain/explain-text';
import { type Explainable, explainable } from '../../../src/plan/explain/explainable';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';
import { planOf } from '../../households/read-household';
import { randomHome } from '../../random-home';
import { operandsIn, stepsIn, unwrapped, worked } from './by-hand';

const reader = {
  asked: (id: string) => interview.questions.find((one) => one.id === id)?.says ?? null,
  words: english,
  columns: 80,
};

const falsehoods = (one: Explainable) =>
  stepsIn(unwrapped(explainText(one, reader))).filter(
    ({ result, right, places }) => Math.abs(worked(right) - result) > 0.5 * 10 ** -places + 1e-9,
  );

test.each([1, 2, 3, 4, 5, 6, 119, 149])(
  'homes made up by chance are explained truly too: %i',
  (seed) => {
    const all = explainable(frozenPlan(randomHome(seed), '2026-11-25', 5));
    expect(all.flatMap(falsehoods)).toEqual([]);
  },
);

describe.each(['birch-street', 'mill-lane', 'ridge-road', 'tower-six'])('%s', (name) => {
  const all = explainable(planOf(name));

  test.each(all)('each step of $id is true by hand with what is printed', (one) => {
    const steps = stepsIn(unwrapped(explainText(one, reader)));
    if ((one.figure.made?.of.length ?? 0) > 1) expect(steps.length).toBeGreaterThan(0);
    expect(falsehoods(one)).toEqual([]);
  });

  test.each(all)('each number in a step of $id is told of below it', (one) => {
    const lines = unwrapped(explainText(one, reader));
    for (const { right, below } of stepsIn(lines)) {
      expect(below.sort()).toEqual([...new Set(operandsIn(right))].sort());
    }
  });

  test('no line is wider than 80 columns', () => {
    const lines = [...figureList(all, reader), ...all.flatMap((one) => explainText(one, reader))];
    expect(lines.filter((line) => line.length > 80)).toEqual([]);
  });
});
