import { expect, test } from 'vitest';
import { sayOneIn, sayTimesAYear } from '../../src/quantity/say-chance';

const at = (low: number, value: number, high: number) => ({ low, value, high });

test('a weakly known chance is said in round words with its range', () => {
  expect(sayOneIn(at(4.44, 18.7, 35.9))).toBe('about 1 in 5 (1 in 25 to 1 in 3)');
  expect(sayOneIn(at(20, 20, 20))).toBe('about 1 in 5');
  expect(sayOneIn(at(0.2, 72, 97))).toBe(
    'about 7 in 10 (less than 1 in 100 to more than 19 in 20)',
  );
});

test('what is said is never far from the chance: a sixth at most from 1 % on', () => {
  for (let percent = 1; percent <= 95; percent += 0.1) {
    const words = /(\d+) in (\d+)/.exec(sayOneIn(at(percent, percent, percent)))!;
    const said = (100 * Number(words[1])) / Number(words[2]);
    expect(said / percent).toBeGreaterThan(5 / 6 - 0.02);
    expect(said / percent).toBeLessThan(6 / 5 + 0.06);
  }
});

test('a weakly known rate is said in whole times or whole years', () => {
  expect(sayTimesAYear(at(1.44, 2.35, 3.37))).toBe('about 2 a year (1 to 3)');
  expect(sayTimesAYear(at(0.345, 0.867, 1.5))).toBe('about 1 a year (fewer than one to 2)');
  expect(sayTimesAYear(at(0.07, 0.263, 0.509))).toBe(
    'about one in 4 years (one in 14 years to one in 2 years)',
  );
  expect(sayTimesAYear(at(0, 0.3, 0.9))).toBe(
    'about one in 3 years (one in 100 years or more to 1 a year)',
  );
});

test('no rate is ever said as one in 1 years or none a year', () => {
  for (let times = 0.005; times < 6; times += 0.003) {
    const said = sayTimesAYear({ low: times / 3, value: times, high: times * 1.2 });
    expect(said).not.toMatch(/one in [01] years|\b0 a year/);
  }
});
