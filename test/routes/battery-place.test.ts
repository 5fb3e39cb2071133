import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Answers } from '../../src/interview/answers';
import { relevant } from '../../src/interview/questions/relevant';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { usableOf } from '../../src/routes/battery-hours';
import { batteryPlaceIfs } from '../../src/routes/stops/stops';

/** A garage that is part of the house, in a cold place: the weather outdoors says nothing sure of it. */
const homeWith = (more: Answers) =>
  homeFromAnswers(
    interview,
    {
      'home-zip': '55731',
      'home-kind': 'house',
      'goal-season': 'winter',
      'battery-place': 'attached-garage',
      ...more,
    },
    '2026-11-25',
  );
const usable = (more: Answers) => usableOf(homeWith(more), 10);
const heater = (more: Answers) => batteryPlaceIfs(homeWith(more)).includes('battery-heater');

test('a place that freezes gives less of a battery and asks for its own heater; that one never did lifts nothing out of doors', () => {
  expect(usable({ 'battery-place-range': ['below-32'] })).toBeLessThan(
    usable({ 'battery-place-range': ['none'] }),
  );
  expect(heater({ 'battery-place-range': ['below-32'] })).toBe(true);
  expect(heater({ 'battery-place-range': ['none'] })).toBe(false);
  const shed = { 'battery-place': 'shed-unheated' };
  expect(heater(shed)).toBe(true);
  expect(heater({ ...shed, 'battery-place-range': ['none'] })).toBe(true);
});

test('the cold of the place moves nothing where the goal is a summer', () => {
  const summer = (range: string[]) =>
    usable({ 'goal-season': 'summer', 'battery-place-range': range });
  expect(summer(['below-32'])).toBe(summer(['none']));
});

test('it is asked only of a place that follows the weather', () => {
  const asked = (place: string) =>
    relevant({ interview, short: false } as Parameters<typeof relevant>[0], {
      'battery-place': place,
    }).some((q) => q.id === 'battery-place-range');
  expect(asked('attached-garage')).toBe(true);
  expect(asked('utility-room')).toBe(false);
});
