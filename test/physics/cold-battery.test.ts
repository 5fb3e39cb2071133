import { describe, expect, it } from 'vitest';
import { hoursItMayCharge } from '../../src/physics/cold-battery';

describe('charging in the cold', () => {
  it('is forbidden in each hour with cells below the limit, unless they are heated', () => {
    const cellC = [5, 0.1, 0, -0.1, -10];
    expect([...hoursItMayCharge(cellC, { leastC: 0, heated: false })]).toEqual([1, 1, 1, 0, 0]);
    expect([...hoursItMayCharge(cellC, { leastC: 0, heated: true })]).toEqual([1, 1, 1, 1, 1]);
  });

  it('counts a temperature that is not known as too cold', () => {
    expect([...hoursItMayCharge([Number.NaN], { leastC: 0, heated: false })]).toEqual([0]);
  });
});
