import { expect, it } from 'vitest';
import interview from '#compiled/questions.js';
import { NIGHT_HOURS } from '../../../src/home/people/life-support';
import type { Answers } from '../../../src/interview/answers';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { findings } from '../../../src/rules/find';

const mask: Answers = { 'medical-devices': ['cpap'], 'second-source': ['none'] };
const homeOf = (answers: Answers) =>
  homeFromAnswers(interview, { ...mask, ...answers }, '2026-11-28');

it('a mask that nobody may sleep a night without counts as a device of life', () => {
  const home = homeOf({ 'device-safe-hours': NIGHT_HOURS - 1 });
  expect(home.lifeSupport).toBe('yes');
  expect(home.loads.find(({ id }) => id === 'cpap')!.life).toBe(true);
  const ids = findings(home, ['preparation']).map(({ id }) => id);
  expect(ids).toEqual(expect.arrayContaining(['second-source', 'leaving-point', 'tell-the-team']));
  expect(ids).not.toContain('mask-second-way');
});

it('any other mask does not, but what was told of a second way is not lost', () => {
  for (const answers of [{}, { 'device-safe-hours': NIGHT_HOURS }]) {
    const home = homeOf(answers as Answers);
    expect(home.lifeSupport).toBe('no');
    const ids = findings(home, ['preparation']).map(({ id }) => id);
    expect(ids).toContain('mask-second-way');
    expect(ids).not.toContain('second-source');
  }
});

it('what only a device of life needs is asked where the mask is one', () => {
  for (const id of ['device-battery-hours', 'device-team'] as const) {
    expect(homeOf({}).facts.applies(id)).toBe(false);
    expect(homeOf({ 'device-safe-hours': NIGHT_HOURS }).facts.applies(id)).toBe(false);
    expect(homeOf({ 'device-safe-hours': NIGHT_HOURS - 0.1 }).facts.applies(id)).toBe(true);
  }
});
