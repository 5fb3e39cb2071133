import { describe, expect, test } from 'vitest';
import { payback } from '../../src/bill/lifecycle/payback';
import { sayPayback } from '../../src/words/en/money/say-payback';

describe('payback at the edges', () => {
  test('nothing spent is not a payback of zero years', () => {
    expect(payback([0, 100, 100])).toEqual({ kind: 'nothing-to-recover' });
    expect(payback([200, 100])).toEqual({ kind: 'nothing-to-recover' });
    expect(payback([])).toEqual({ kind: 'nothing-to-recover' });
  });
  test('no savings, or too little, is never', () => {
    expect(payback([-100, 0, 0])).toEqual({ kind: 'never' });
    expect(payback([-100, 10, 10])).toEqual({ kind: 'never' });
    expect(payback([-100])).toEqual({ kind: 'never' });
  });
  test('a replacement that undoes a payback for a while gives both years', () => {
    const found = payback([-100, 60, 60, -50, 60]);
    expect(found).toEqual({
      kind: 'recovered',
      first: { wholeYear: 2, years: 1 + 40 / 60 },
      stays: { wholeYear: 4, years: 3 + 30 / 60 },
    });
    expect(sayPayback(found, 4)).toBe('after 1.7 years at first, for good after 3.5 years');
  });
  test('a replacement that undoes it to the end is lost again', () => {
    expect(payback([-100, 60, 60, -50]).kind).toBe('lost-again');
  });
  test('an outlay recovered to the cent counts as recovered in that year', () => {
    const found = payback([-0.3, 0.1, 0.1, 0.1]);
    expect(found.kind === 'recovered' && found.first).toEqual({ wholeYear: 3, years: 3 });
  });
  test('the words hold no infinity, no NaN and no zero', () => {
    for (const flow of [
      [-100, 0],
      [0, 10],
      [-100, 60, 60, -50],
      [-100, 200],
    ]) {
      expect(sayPayback(payback(flow), 15)).not.toMatch(/Infinity|NaN|\b0 years/);
    }
  });
});
