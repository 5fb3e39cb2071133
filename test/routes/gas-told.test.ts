import { describe, expect, test } from 'vitest';
import type { Answers } from '../../src/interview/answers';
import { gasStops } from '../../src/routes/stops/stops';
import { sayStop } from '../../src/words/en/say-stop';
import { answeredHome } from '../rules/some-home';

const stops = (answers: Answers) =>
  gasStops(answeredHome({ 'home-kind': 'house', ...answers })).map(sayStop);

describe('gas that was told goes before gas nobody knows of', () => {
  test.each([
    ['a gas furnace', { 'heat-main': 'gas-furnace' }],
    ['a gas water heater', { 'water-heater': 'gas-pilot' }],
    ['a gas stove', { 'cook-main': 'gas' }],
  ])('%s: the house has gas, only not known whence', (_, told) => {
    for (const supply of [{}, { 'gas-supply': 'not sure' }] as Answers[]) {
      const [why] = stops({ ...told, ...supply });
      expect(why).toContain('you burn gas');
      expect(why).not.toMatch(/there is no/);
    }
  });

  test('nothing told is not known; only "neither" is none', () => {
    expect(stops({})).toEqual([expect.stringContaining('we do not know')]);
    expect(stops({ 'heat-main': 'not sure' })).toEqual([expect.stringContaining('do not know')]);
    expect(stops({ 'gas-supply': 'none' })).toEqual([expect.stringContaining('there is no gas')]);
    expect(stops({ 'gas-supply': 'town-gas' })).toEqual([]);
    expect(stops({ 'home-kind': 'apartment', 'gas-supply': 'not sure' })).toEqual([]);
  });
});
