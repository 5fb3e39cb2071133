import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { shownFor, stepOf, stepsUnder } from '../../../src/papers/explain/by-hand';
import { explainText, figureList } from '../../../src/papers/explain/explain-text';
import { planYaml } from '../../../src/papers/plan-file/to-yaml';
import { type Explainable, explainable } from '../../../src/plan/explain/explainable';
import { atEnd } from '../../../src/quantity/at-end';
import type { Figure } from '../../../src/quantity/figure';
import { operandsOf } from '../../../src/quantity/made';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';
import { answersOf, planOf } from '../../households/read-household';
import { randomHome } from '../../random-home';
import { operandsIn, stepsIn, unwrapped, worked } from './by-hand';
import { onFirstPage } from './on-first-page';
import { roundedOtherwise } from './one-rounding';

const reader = {
  asked: (id: string) => interview.questions.find((one) => one.id === id)?.says ?? null,
  words: english,
  columns: 80,
};

const falsehoods = (one: Explainable) =>
  stepsIn(unwrapped(explainText(one, reader))).filter(
    ({ result, right, places }) => Math.abs(worked(right) - result) > 0.5 * 10 ** -places + 1e-9,
  );

/** Figures at one end that are neither worked out nor said to come from anywhere. */
function silentEnds(root: Figure): Figure[] {
  const ends = (['low', 'high'] as const).map((end) => atEnd(root, end));
  const all = ends.flatMap((end) => [
    end,
    ...stepsUnder(end).flatMap(({ made }) => operandsOf(made)),
  ]);
  return all.map(shownFor).filter((one) => {
    const { is, cite, ends: rule, question } = one.source;
    const says =
      (is !== undefined && is !== 'worked-out') ||
      [cite, rule, question].some((x) => x !== undefined);
    return one.end !== undefined && stepOf(one) === undefined && !says;
  });
}

test.each([1, 2, 3, 4, 5, 6, 119, 149])(
  'homes made up by chance are explained truly too: %i',
  (seed) => {
    const all = explainable(frozenPlan(randomHome(seed), '2026-11-25', 5));
    expect(all.flatMap(falsehoods)).toEqual([]);
    expect(all.flatMap(({ figure }) => silentEnds(figure))).toEqual([]);
  },
);

describe.each(['birch-street', 'mill-lane', 'ridge-road', 'tower-six'])('%s', (name) => {
  const all = explainable(planOf(name));

  test.each(all)('each step of $id is true by hand with what is printed', (one) => {
    const steps = stepsIn(unwrapped(explainText(one, reader)));
    if ((one.figure.made?.of.length ?? 0) > 1) expect(steps.length).toBeGreaterThan(0);
    expect(falsehoods(one)).toEqual([]);
  });

  test.each(all)(
    'both ends of the range of $id are explained, and the range stands in its title',
    (one) => {
      const lines = explainText(one, reader);
      const { low, value, high } = one.figure;
      expect(lines.includes('Low end')).toBe(low !== value);
      expect(lines.includes('High end')).toBe(high !== value);
      for (const [end, title] of [
        [low, 'Low end'],
        [high, 'High end'],
      ] as const) {
        if (end === value) continue;
        const first = lines[lines.indexOf(title) + 1]!;
        const printed = Number(/-?\$?[\d,.]*\d/.exec(first)![0].replaceAll(/[$,]/g, ''));
        expect(Math.abs(printed - end)).toBeLessThanOrEqual(0.02 * Math.abs(end));
      }
    },
  );

  test.each(all)('no end of $id is left unsaid: steps, an answer, a row or a rule', (one) => {
    expect(silentEnds(one.figure)).toEqual([]);
  });

  test.each(all)('each number in a step of $id is told of below it', (one) => {
    const lines = unwrapped(explainText(one, reader));
    for (const { right, below } of stepsIn(lines)) {
      expect(below.sort()).toEqual([...new Set(operandsIn(right))].sort());
    }
  });

  test('every figure on the first page can be explained', () => {
    const { shown, unexplained } = onFirstPage(planOf(name));
    expect(shown.length).toBeGreaterThan(3);
    expect(unexplained).toEqual([]);
  });

  test('a figure is shown with one rounding on every paper and screen', () => {
    expect(roundedOtherwise(planOf(name), answersOf(name))).toEqual([]);
  });

  test('the plan file promises no more digits than four, in what it says of a source too', () => {
    expect(planYaml(planOf(name), english).match(/from: .*\d\.\d{8,}.*/g)).toBeNull();
  });

  test('no line is wider than 80 columns', () => {
    const lines = [...figureList(all, reader), ...all.flatMap((one) => explainText(one, reader))];
    expect(lines.filter((line) => line.length > 80)).toEqual([]);
  });
});
