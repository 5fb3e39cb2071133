import { join } from 'node:path';
import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Answers } from '../../src/interview/answers';
import { weigher } from '../../src/plan/weigh';
import { readHome } from '../../src/store/read-home';
import { folder } from '../households/read-household';

const weigh = weigher(interview);
const read = readHome(join(folder, 'mill-lane.home.yaml'), interview);
if (!read.ok) throw new Error('the demo home is not sound');
const { answers } = read;

/** Hours told by the line beside the question; two weeks where it says so. */
function lasts(changed: Answers): number {
  const [line] = weigh({ ...answers, ...changed }).lines;
  if (/two weeks or more/.test(line!)) return 336;
  const [, days, hours] = /about (?:(\d+) days?)? ?(?:(\d+) h)?\.$/.exec(line!)!;
  return 24 * Number(days ?? 0) + Number(hours ?? 0);
}

test('the dark January week is told once place and loads are known, and not before', () => {
  expect(weigh(answers).lines[0]).toMatch(/^In a dark January week a 10 kWh battery with \d kW of/);
  expect(weigh({}).lines).toEqual([]);
  expect(weigh({ 'home-zip': '43004' }).lines).toEqual([]);
});

test('it moves with the answers: more loads shorten it, less shade lengthens it', () => {
  const few = lasts({ 'must-run': ['fridge', 'internet'] });
  const more = lasts({ 'must-run': ['fridge', 'internet', 'heat'], 'fridge-count': 3 });
  expect(more).toBeLessThan(few);
  const shaded = lasts({ 'roof-shade': 'most', 'fridge-count': 3 });
  const clear = lasts({ 'roof-shade': 'little', 'fridge-count': 3 });
  expect(clear).toBeGreaterThan(shaded);
});

test('the same answers give the same line, whichever were asked about before', () => {
  const before = weigh(answers).lines;
  weigh({ ...answers, 'home-zip': '99723' });
  expect(weigh(answers).lines).toEqual(before);
});
