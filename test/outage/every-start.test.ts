import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ChargePass } from '../../src/outage/charge-pass';
import { DrawdownPass } from '../../src/outage/drawdown-pass';
import {
  chargeForEveryStart,
  chargeToStartWith,
  neededForEveryStart,
} from '../../src/outage/every-start';
import { madeUpHours, plainDrawdown, plainWalk } from './plain-walk';

const TWO_YEARS = 2 * 8760;

describe('every hour an outage could start', () => {
  it('equals a plain walk at every start hour of 200 made-up two-year records', () => {
    const home = fc.record({
      seed: fc.nat(),
      sunKw: fc.double({ min: 0, max: 6, noNaN: true }),
      loadKw: fc.double({ min: 0, max: 1.2, noNaN: true }),
      cap: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 30, noNaN: true })),
      full: fc.double({ min: 0, max: 1, noNaN: true }),
      hours: fc.oneof(
        { weight: 9, arbitrary: fc.integer({ min: 1, max: 24 }) },
        { weight: 1, arbitrary: fc.integer({ min: 25, max: 200 }) },
      ),
    });
    fc.assert(
      fc.property(home, ({ seed, sunKw, loadKw, cap, full, hours }) => {
        const net = madeUpHours(TWO_YEARS, seed, sunKw, loadKw);
        const needed = neededForEveryStart(net, hours);
        const { thresholdKwh, unavoidableKwh } = chargeForEveryStart(net, hours, cap);
        let worst = 0;
        for (let start = 0; start < TWO_YEARS; start++) {
          const plain = plainWalk(net, start, hours, cap, full * cap);
          const lost = unavoidableKwh[start]! + Math.max(0, thresholdKwh[start]! - full * cap);
          const fall = needed[start]! - plainDrawdown(net, start, hours);
          worst = Math.max(worst, Math.abs(lost - plain.unservedKwh), Math.abs(fall));
        }
        // sums of up to 200 hours of some kWh, added in another order
        expect(worst).toBeLessThan(1e-10);
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });

  it('equals a plain walk over a week, at every start hour of a year', () => {
    const net = madeUpHours(8760, 7, 4, 0.5);
    const needed = neededForEveryStart(net, 168);
    const charge = chargeForEveryStart(net, 168, 9);
    let worst = 0;
    for (let start = 0; start < 8760; start++) {
      const plain = plainWalk(net, start, 168, 9, 5);
      const lost = charge.unavoidableKwh[start]! + Math.max(0, charge.thresholdKwh[start]! - 5);
      worst = Math.max(worst, Math.abs(lost - plain.unservedKwh));
      worst = Math.max(worst, Math.abs(needed[start]! - plainDrawdown(net, start, 168)));
    }
    expect(worst).toBeLessThan(1e-10);
  });

  it('says ride through from full exactly when the store is at least the storage needed', () => {
    const net = madeUpHours(8760, 11, 5, 0.4);
    const needed = neededForEveryStart(net, 72);
    for (const cap of [2, 8, 14]) {
      const charge = chargeForEveryStart(net, 72, cap);
      const otherwise: number[] = [];
      for (let s = 0; s < 8760; s++) {
        if (Math.abs(needed[s]! - cap) < 1e-6) continue;
        const start = chargeToStartWith(charge.thresholdKwh[s]!, charge.unavoidableKwh[s]!, cap);
        if ((start !== null) !== needed[s]! <= cap) otherwise.push(s);
      }
      expect(otherwise).toEqual([]);
    }
  });

  it('gives the same whether the hours come at once or in pieces', () => {
    const net = madeUpHours(500, 3, 5, 0.4);
    const piece = fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 10, maxLength: 10 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 120 }), piece, (hours, pieces) => {
        const whole = [0, 1, 2].map(() => new Float64Array(500));
        const parts = [0, 1, 2].map(() => new Float64Array(500));
        new DrawdownPass(hours).push(net, whole[0]!);
        new ChargePass(hours, 6).push(net, whole[1]!, whole[2]!);
        const drawdown = new DrawdownPass(hours);
        const charge = new ChargePass(hours, 6);
        let written = 0;
        for (let from = 0, i = 0; from < 500; i++) {
          const hoursNow = net.subarray(from, from + pieces[i % 10]!);
          const before = written;
          written += drawdown.push(hoursNow, parts[0]!, before);
          charge.push(hoursNow, parts[1]!, parts[2]!, before);
          from += hoursNow.length;
        }
        expect(written).toBe(500 - hours + 1);
        expect(parts).toEqual(whole);
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });

  it('has no windows for a record shorter than the outage, and one hour windows for one hour', () => {
    const net = Float64Array.of(2, -3, 1);
    expect(neededForEveryStart(net, 4)).toHaveLength(0);
    expect(chargeForEveryStart(net, 4, 5).thresholdKwh).toHaveLength(0);
    expect([...neededForEveryStart(net, 1)]).toEqual([0, 3, 0]);
    expect([...chargeForEveryStart(net, 1, 5).thresholdKwh]).toEqual([-2, 3, -1]);
    const out = new Float64Array(1);
    expect(new DrawdownPass(3).push(net, out)).toBe(1); // without the ring, N = D is one window
    expect([...out]).toEqual([3]);
    // round the ring: from hour 1, -3 +1 +2 falls 3; from hour 2, +1 +2 -3 falls 3
    expect([...neededForEveryStart(net, 3)]).toEqual([3, 3, 3]);
  });

  it('never needs less for a longer outage', () => {
    const net = madeUpHours(8760, 5, 4, 0.6);
    const lengths = [12, 24, 72, 168, 336].map((hours) => neededForEveryStart(net, hours));
    for (let i = 1; i < lengths.length; i++) {
      const shorter = lengths[i - 1]!;
      const drop = lengths[i]!.reduce((most, kwh, s) => Math.max(most, shorter[s]! - kwh), 0);
      expect(drop).toBeLessThan(1e-10);
    }
  });

  it('stays finite with no sun, no load and no battery', () => {
    const dark = new Float64Array(48).fill(-1);
    expect([...neededForEveryStart(dark, 24)].every((kwh) => kwh === 24)).toBe(true);
    const none = chargeForEveryStart(dark, 24, 0);
    expect(none.unavoidableKwh[0]! + Math.max(0, none.thresholdKwh[0]!)).toBe(24);
    const idle = new Float64Array(48);
    expect(Math.max(...neededForEveryStart(idle, 24))).toBe(0);
    expect(chargeToStartWith(chargeForEveryStart(idle, 24, 0).thresholdKwh[0]!, 0, 0)).toBe(0);
    expect(neededForEveryStart(new Float64Array(0), 24)).toHaveLength(0);
  });

  it('refuses a length that is not whole hours and a store below zero', () => {
    expect(() => new DrawdownPass(0)).toThrow(RangeError);
    expect(() => new DrawdownPass(1.5)).toThrow(/1.5 h/);
    expect(() => new ChargePass(24, -1)).toThrow(/-1 kWh/);
    expect(() => new ChargePass(24, Number.NaN)).toThrow(/NaN kWh/);
  });
});
