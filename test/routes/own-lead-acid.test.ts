import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Answers } from '../../src/interview/answers';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { ownBattery } from '../../src/routes/own-battery';
import { shareAtItsCurrent, shareAtItsTemperature } from '../../src/routes/own-lead-acid';

const home = (more: Answers) =>
  homeFromAnswers(
    interview,
    {
      'people-count': 2,
      'goal-season': 'winter',
      'goal-hours': 24,
      'home-zip': '24477',
      'fridge-count': 1,
      'internet-kind': 'cable',
      'must-run': ['fridge', 'lights', 'internet'],
      'nice-run': ['none'],
      'own-sources': ['home-battery'],
      'battery-kw': 5,
      'battery-years': 5,
      'battery-kind': 'lead-acid',
      'battery-place': 'basement',
      ...more,
    },
    '2026-11-25',
  );

test('at ten times the 20-hour current, exponent 1.1, it gives 10^-0.1 of its nameplate, as in battery handbooks', () => {
  const kw = 10 / 20;
  const heavy = home({ 'must-run': ['fridge', 'lights', 'internet'], 'water-source': 'public' });
  const mean = heavy.loads
    .filter((load) => load.rank === 'must' && !load.offInOutage)
    .reduce((sum, load) => sum + load.kwhPerDay.winter.value / 24, 0);
  expect(mean).toBeLessThan(kw);
  const nameplateKwh = (mean * 20) / 10;
  expect(shareAtItsCurrent(heavy, { nameplateKwh, kw, peukertExponent: 1.1 })).toBeCloseTo(
    10 ** -0.1,
    9,
  );
});

test('a slow draw gives no more than the nameplate, a lithium battery knows no such law', () => {
  const of = { nameplateKwh: 500, kw: 5, peukertExponent: 1.22 };
  expect(shareAtItsCurrent(home({}), of)).toBe(1);
  expect(shareAtItsCurrent(home({}), { ...of, nameplateKwh: 1, peukertExponent: 1 })).toBeCloseTo(
    1,
  );
});

test('a small lead-acid battery is counted below depth x age alone, a large one at it', () => {
  const usable = (kwh: number) => ownBattery(home({ 'battery-kwh': kwh }))!.usableKwh / kwh;
  const cell = shareAtItsTemperature(20);
  expect(usable(30)).toBeCloseTo(0.5 * (1 - 5 * 0.08) * cell, 6);
  expect(usable(0.5)).toBeLessThan(0.95 * usable(30));
});

test('by IEEE 485 a cell at 0 C must be 1.405 times as large (from memory), a warm one no smaller', () => {
  expect(shareAtItsTemperature(0)).toBeCloseTo(1 / 1.405, 9);
  expect(shareAtItsTemperature(35)).toBe(1);
});
