import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compose, endCharge, hourWindow, unserved, type Window } from '../../src/outage/window';
import { plainWalk } from './plain-walk';

const numbers = (w: Window) => [w.shift, w.low, w.high, w.threshold, w.unavoidable];
const run = (net: readonly number[], cap: number) =>
  net.map((a) => hourWindow(a, cap)).reduce(compose);
const hours = fc.array(fc.double({ min: -6, max: 6, noNaN: true }), {
  minLength: 1,
  maxLength: 12,
});
const cap = fc.double({ min: 0, max: 8, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('five numbers for a run of hours', () => {
  it('shifts and clamps the charge: +2 then -4 on a store of 5, by hand', () => {
    const both = run([2, -4], 5);
    expect([both.shift, both.low, both.high]).toEqual([-2, 0, 1]);
    // 0 -> 2 -> 0 (2 missing); 2 -> 4 -> 0; 2.5 -> 4.5 -> 0.5; 5 -> 5 -> 1
    expect([0, 2, 2.5, 5].map((x) => endCharge(both, x))).toEqual([0, 0, 0.5, 1]);
  });

  it('counts what is missing against the charge: +2 then -4, by hand', () => {
    const both = run([2, -4], 5);
    expect([both.threshold, both.unavoidable]).toEqual([2, 0]);
    expect([0, 1, 2].map((x) => unserved(both, x))).toEqual([2, 1, 0]);
  });

  it('knows when no charge is enough: +9 then -7 on a store of 5 always lacks 2', () => {
    const both = run([9, -7], 5);
    expect(numbers(both)).toEqual([2, 0, 0, -4, 2]);
    for (const x of [0, 1, 3, 5]) {
      expect(endCharge(both, x)).toBe(0);
      expect(unserved(both, x)).toBe(2);
    }
  });

  it('gives the same five numbers whichever pair is taken first', () => {
    fc.assert(
      fc.property(hours, hours, hours, cap, (f, g, h, kwh) => {
        const [a, b, c] = [run(f, kwh), run(g, kwh), run(h, kwh)];
        const left = numbers(compose(compose(a, b), c));
        const right = numbers(compose(a, compose(b, c)));
        // sums of up to 36 numbers of size 6 in another order
        left.forEach((value, i) => {
          expect(Math.abs(value - right[i]!)).toBeLessThan(1e-12);
        });
      }),
      { seed: 20261125, numRuns: 1000 },
    );
  });

  it('ends and lacks the same as stepping the store hour by hour', () => {
    fc.assert(
      fc.property(hours, cap, share, (net, kwh, full) => {
        const start = full * kwh;
        const whole = run(net, kwh);
        const plain = plainWalk(net, 0, net.length, kwh, start);
        expect(endCharge(whole, start)).toBeCloseTo(plain.endKwh, 11);
        expect(unserved(whole, start)).toBeCloseTo(plain.unservedKwh, 11);
      }),
      { seed: 20261125, numRuns: 1000 },
    );
  });
});
