import { describe, expect, test } from 'vitest';
import type { Load } from '../../../src/home/home';
import { carriedLegs } from '../../../src/plan/electrical/carried-legs';

const load = (_name: string, volts: 120 | 240, amps: number, motor: boolean) =>
  ({ volts, runningVa: { value: amps * volts }, startVa: motor ? {} : null }) as Load;

describe('amps on the legs of what a source carries', () => {
  // NEC Annex D example D1(b), motors alone: 12 A faces 10 A and 8 A, 6 A on both legs, a quarter of the 12 A on top.
  test('lays motors as Annex D example D1(b) does, and adds a quarter of the largest', () => {
    const legs = carriedLegs([
      load('room air conditioner', 240, 6, true),
      load('small air conditioner', 120, 12, true),
      load('dishwasher', 120, 10, true),
      load('disposer', 120, 8, true),
    ]);
    expect(legs.legA).toBeCloseTo(6 + 12 + 3, 9);
    expect(legs.legB).toBeCloseTo(6 + 10 + 8 + 2.5, 9);
  });

  test('adds no quarter where nothing is a motor', () => {
    const legs = carriedLegs([load('lights', 120, 4, false), load('heater', 240, 10, false)]);
    expect(legs).toEqual({ legA: 14, neutral: 4, legB: 10 });
  });
});
