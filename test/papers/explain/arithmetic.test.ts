import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { explainText, figureList } from '../../../src/papers/explain/explain-text';
import { explainable } from '../../../src/plan/explain/explainable';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';
import { operandsIn, stepsIn, unwrapped, worked } from './by-hand';

const reader = {
  asked: (id: string) => interview.questions.find((one) => one.id === id)?.says ?? null,
  words: english,
  columns: 80,
};

describe.each(['birch-street', 'mill-lane', 'ridge-road', 'tower-six'])('%s', (name) => {
  const all = explainable(planOf(name));

  test.each(all)('each step of $id is true by hand with what is printed', (one) => {
    const steps = stepsIn(unwrapped(explainText(one, reader)));
    const { made } = one.figure;
    if ((made?.of.length ?? 0) > 1) expect(steps.length).toBeGreaterThan(0);
    for (const { result, right, places } of steps) {
      const hand = worked(right);
      const off = Math.abs(hand - result);
      expect(off, `${result} = ${right}, by hand ${hand}`).toBeLessThanOrEqual(
        0.5 * 10 ** -places + 1e-9,
      );
    }
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
