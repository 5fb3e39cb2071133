import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compose, endCharge, hourWindow } from '../../src/outage/window';

/**
 * Charge of a store between 0 and a, by the explicit formula of Kruk, Lehoczky, Ramanan & Shreve,
 * "An explicit formula for the Skorokhod map on [0, a]", Ann. Probab. 35 (2007) 1740-1768:
 *   phi(t) = psi(t) + sup_{s<=t} [-psi(s)]+
 *   x(t)   = phi(t) - sup_{s<=t} [ (phi(s) - a)+  min  inf_{s<=u<=t} phi(u) ]
 * where psi is the unbounded running charge, psi(0) the charge at the start.
 */
function explicitCharge(psi: readonly number[], a: number): number {
  const phi: number[] = [];
  let lift = 0;
  for (const value of psi) {
    lift = Math.max(lift, -value);
    phi.push(value + lift);
  }
  let take = 0;
  let least = Infinity;
  for (let s = phi.length - 1; s >= 0; s--) {
    least = Math.min(least, phi[s]!);
    take = Math.max(take, Math.min(Math.max(phi[s]! - a, 0), least));
  }
  return phi.at(-1)! - take;
}

describe('the charge between empty and full, against Kruk and others 2007', () => {
  it('agrees with the explicit formula of the two-sided reflection on 2000 random runs', () => {
    const net = fc.array(fc.double({ min: -4, max: 4, noNaN: true }), {
      minLength: 1,
      maxLength: 60,
    });
    const size = fc.double({ min: 0.01, max: 10, noNaN: true });
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(net, size, share, (hours, cap, full) => {
        const start = full * cap;
        const psi = [start];
        for (const a of hours) psi.push(psi.at(-1)! + a);
        const window = hours.map((a) => hourWindow(a, cap)).reduce(compose);
        // 60 additions of numbers up to 4 on either side
        expect(endCharge(window, start)).toBeCloseTo(explicitCharge(psi, cap), 11);
      }),
      { seed: 20261125, numRuns: 2000 },
    );
  });
});
