import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { blockWatts } from '../../src/routes/kinds/generator-blocks';

const { loads } = homeFromAnswers(
  interview,
  { 'must-run': ['fridge', 'lights'], 'fridge-count': 1 },
  '2026-11-25',
);
const load = (id: string) => loads.find((one) => one.id === id)!;
const kwh = (id: string) => blockWatts([load(id)], 'winter').reduce((sum, w) => sum + w, 0) / 1000;

test('a refrigerator that stood still makes up for it in the blocks, as far as its power goes', () => {
  const fridge = load('fridge');
  // Seven hours of blocks at its running power are the most it can take.
  const most = (7 * fridge.runningWatts.value) / 1000;
  expect(kwh('fridge')).toBeCloseTo(Math.min(most, fridge.kwhPerDay.winter.value), 9);
  const byShape = [6, 7, 8, 17, 18, 19, 20].reduce((sum, h) => sum + fridge.shape[h]!, 0);
  expect(kwh('fridge')).toBeGreaterThan(2 * byShape * fridge.kwhPerDay.winter.value);
});

test('light that was off is not made up for', () => {
  const lights = load('lights-led');
  expect(kwh('lights-led')).toBeLessThan(lights.kwhPerDay.winter.value);
});
