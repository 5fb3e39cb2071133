import { expect, test } from 'vitest';
import type { Advice } from '../../../src/advice/advice';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { touching } from '../../../src/plan/contradictions/touching';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';
import { houseWith } from '../electrical/electrical-home';

/** A generator is advised; a battery would go where water has been, and none is bought. */
const plan = planOf('birch-street');
const below = plan.settleIfEver;

test('answers at odds about a battery nobody buys are no first step and make no draft', () => {
  expect(below.map(({ id }) => id)).toEqual(['battery-below-flood']);
  expect(plan.electrical.toSettle).toEqual([]);
  expect(plan.nextSteps.map(({ id }) => id)).not.toContain('settle');
  expect(plan.draftBecause).toEqual([]);
});

test('they are kept where it says what is worth finding out', () => {
  const [front, details] = planMarkdown(plan, english).split('\n# The details\n');
  expect(details).toContain(
    'Worth settling if you ever want a battery fixed to the house. The battery would go in the basement.',
  );
  expect(front).not.toContain('The battery would go');
});

test('they come first again where such a battery is advised, beside, on the list, owned, or possible on another condition', () => {
  const { advice, possibleIf, home } = plan;
  const battery = plan.routes.find(({ kind }) => kind === 'battery-circuits')!;
  const first = (more: Partial<Advice>, ifs = possibleIf, at = home) =>
    touching(at, below, { ...advice, ...more }, () => ifs).toSettle.length;
  expect(first({})).toBe(0);
  expect(first({ route: battery })).toBe(1);
  expect(first({ beside: [battery] })).toBe(1);
  expect(first({ wholeJob: battery })).toBe(1);
  expect(first({ list: [{ ...advice.list.at(-1)!, route: battery }] })).toBe(1);
  const onTheRoof = possibleIf.map((one) => ({
    ...one,
    conditions: [{ code: 'owner-unknown', settles: 'owner' } as const],
  }));
  expect(
    possibleIf.some(({ routes }) => routes.some(({ kind }) => kind === 'battery-circuits')),
  ).toBe(true);
  expect(first({}, onTheRoof)).toBe(1);
  expect(first({}, possibleIf, houseWith({ 'own-sources': ['home-battery'] }))).toBe(1);
});

test('what is about the home stays, whatever is bought', () => {
  const panel = { id: 'main-over-bus', mainAmps: 200, busAmps: 125, questions: [] } as const;
  const { toSettle } = touching(plan.home, [panel], plan.advice, () => plan.possibleIf);
  expect(toSettle).toEqual([panel]);
});
