import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chargeToKeep } from '../../src/outage/charge-to-keep';
import { chargeForEveryStart, neededForEveryStart } from '../../src/outage/every-start';
import { hoursSurvived } from '../../src/outage/hours-survived';
import { oddsFromCharge, oddsFromFull } from '../../src/outage/ride-through-odds';
import { unservedByMonth } from '../../src/outage/unserved-by-month';
import { madeUpHours, plainWalk } from './plain-walk';

const YEAR = 8760;

/** Hours served from full, by stepping. */
function plainSurvival(net: Float64Array, start: number, cap: number, limit: number): number {
  let store = cap;
  for (let k = 0; k < limit; k++) {
    const a = net[(start + k) % net.length]!;
    if (store + a < -1e-9) return k + store / -a;
    store = Math.min(Math.max(store + a, 0), cap);
  }
  return limit;
}

describe('hours a full store survives', () => {
  it('equals stepping from every start hour, on 60 made-up years', () => {
    const home = fc.record({
      seed: fc.nat(),
      sunKw: fc.double({ min: 0, max: 6, noNaN: true }),
      loadKw: fc.double({ min: 0, max: 1.2, noNaN: true }),
      cap: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 30, noNaN: true })),
      limitHours: fc.integer({ min: 1, max: 336 }),
    });
    fc.assert(
      fc.property(home, ({ seed, sunKw, loadKw, cap, limitHours }) => {
        const net = madeUpHours(YEAR, seed, sunKw, loadKw);
        const got = hoursSurvived({ netKwh: net, capKwh: cap, limitHours });
        let worst = 0;
        for (let s = 0; s < YEAR; s++) {
          worst = Math.max(worst, Math.abs(got[s]! - plainSurvival(net, s, cap, limitHours)));
        }
        // the last hour's share divides a rounding of 1e-13 by its load
        expect(worst).toBeLessThan(1e-6);
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });

  it('ends at the first hour over the power limit, whatever the charge', () => {
    const netKwh = new Float64Array(48).fill(-0.1);
    const overloadKwh = new Float64Array(48);
    overloadKwh[30] = 0.5;
    const got = hoursSurvived({ netKwh, capKwh: 100, limitHours: 24, overloadKwh });
    expect([got[0], got[6], got[7], got[30], got[31]]).toEqual([24, 24, 23, 0, 24]);
  });

  it('is 0 for no battery and the limit for no load, never NaN', () => {
    const netKwh = new Float64Array(24).fill(-1);
    expect([...hoursSurvived({ netKwh, capKwh: 0, limitHours: 12 })]).toEqual(
      new Array(24).fill(0),
    );
    const idle = new Float64Array(24);
    const got = hoursSurvived({ netKwh: idle, capKwh: 0, limitHours: 100 });
    expect([...got]).toEqual(new Array(24).fill(100));
  });
});

describe('the odds of riding through', () => {
  const netKwh = madeUpHours(2 * YEAR, 3, 4.5, 0.5);
  const capKwh = 9;
  const survived = hoursSurvived({ netKwh, capKwh, limitHours: 336 });

  it('counts start hours by month, the same by three roads', () => {
    const full = oddsFromFull(survived);
    expect(oddsFromCharge({ netKwh, capKwh, startKwh: capKwh })).toEqual(full);
    for (const { hours, months } of full) {
      const needed = neededForEveryStart(netKwh, hours);
      const june = needed.filter((_, s) => s % YEAR >= 3624 && s % YEAR < 4344);
      expect(june.length).toBe(2 * 720);
      expect(months[5]).toBe(june.filter((kwh) => kwh <= capKwh).length / june.length);
    }
    expect(full[0]!.all!).toBeGreaterThan(0.2);
    expect(full[4]!.all!).toBeLessThan(0.8);
  });

  it('falls with a longer outage and with less charge at its start', () => {
    const full = oddsFromFull(survived);
    for (let i = 1; i < full.length; i++) {
      expect(full[i]!.all!).toBeLessThanOrEqual(full[i - 1]!.all!);
    }
    const half = oddsFromCharge({ netKwh, capKwh, startKwh: 4.5 });
    const own = oddsFromCharge({ netKwh, capKwh, startKwh: new Float64Array(2 * YEAR).fill(4.5) });
    expect(own).toEqual(half);
    half.forEach((odds, i) => {
      expect(odds.all!).toBeLessThanOrEqual(full[i]!.all!);
    });
    expect(half[0]!.all!).toBeLessThan(full[0]!.all!);
  });

  it('never fall with more battery or more sun', () => {
    const kwh = fc.double({ min: 0, max: 20, noNaN: true });
    const sun = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(fc.nat(), kwh, kwh, sun, sun, (seed, cap, more, kw, moreKw) => {
        const at = (battery: number, sunKw: number) => {
          const net = madeUpHours(YEAR, seed, sunKw, 0.5);
          return oddsFromFull(hoursSurvived({ netKwh: net, capKwh: battery, limitHours: 336 })).map(
            (odds) => odds.all!,
          );
        };
        const base = at(cap, kw);
        at(cap + more, kw).forEach((odds, i) => {
          expect(odds).toBeGreaterThanOrEqual(base[i]!);
        });
        at(cap, kw + moreKw).forEach((odds, i) => {
          expect(odds).toBeGreaterThanOrEqual(base[i]!);
        });
      }),
      { seed: 20261125, numRuns: 40 },
    );
  });

  it('has none for a record shorter than the outage, and for months without an hour', () => {
    const twoDays = netKwh.slice(0, 48);
    const short = oddsFromFull(hoursSurvived({ netKwh: twoDays, capKwh, limitHours: 336 }));
    expect(short[0]!.months[0]).not.toBeNull();
    expect(short[0]!.months[1]).toBeNull();
    expect([short[2]!.all, short[2]!.months[0]]).toEqual([null, null]);
    expect(oddsFromCharge({ netKwh: twoDays, capKwh, startKwh: capKwh })).toEqual(short);
  });

  it('counts an hour over the power limit as not ridden through, also round the ring', () => {
    const overloadKwh = new Float64Array(2 * YEAR);
    overloadKwh[5] = 1;
    const odds = oddsFromCharge({
      netKwh: new Float64Array(2 * YEAR),
      capKwh: 1,
      startKwh: 1,
      overloadKwh,
      lengths: [24],
    })[0]!;
    // 24 of the start hours reach hour 5: 0..5 in January, 18 in the December before
    expect(odds.months[0]).toBeCloseTo(1 - 6 / (2 * 744), 12);
    expect(odds.months[11]).toBeCloseTo(1 - 18 / (2 * 744), 12);
    expect(odds.months[5]).toBe(1);
  });
});

describe('how full to keep the store', () => {
  const netKwh = madeUpHours(2 * YEAR, 9, 4.5, 0.4);
  const capKwh = 12;
  const needed = chargeForEveryStart(netKwh, 24, capKwh);

  it('gives the charge from which that share of the month rides through', () => {
    const [, ninety] = chargeToKeep(needed, capKwh);
    const january = ninety!.months[0]!;
    const odds = (startKwh: number) =>
      oddsFromCharge({ netKwh, capKwh, startKwh, lengths: [24] })[0]!.months[0]!;
    expect(january).toBeGreaterThan(0);
    expect(odds(january + 1e-6)).toBeGreaterThanOrEqual(0.9);
    expect(odds(january - 0.05)).toBeLessThan(0.9);
  });

  it('says that full is not enough, and asks nothing where the sun does it all', () => {
    const dark = new Float64Array(YEAR).fill(-1);
    const [middle] = chargeToKeep(chargeForEveryStart(dark, 24, 10), 10);
    expect(middle!.months[6]).toBeNull();
    const bright = new Float64Array(YEAR).fill(1);
    const all = chargeToKeep(chargeForEveryStart(bright, 24, 10), 10);
    expect(all.map((row) => row.months[6])).toEqual([0, 0, 0]);
  });
});

describe('energy the house goes without', () => {
  it('is the mean of plain walks by month, at the house, with the power limit apart', () => {
    const netKwh = madeUpHours(YEAR, 21, 4, 0.5);
    const overloadKwh = Float64Array.from({ length: YEAR }, (_, t) => (t % 24 === 18 ? 0.7 : 0));
    const got = unservedByMonth({
      netKwh,
      overloadKwh,
      capKwh: 8,
      startKwh: 6,
      outageHours: 72,
      dischargeEfficiency: 0.9,
    });
    let sum = 0;
    for (let s = 8016; s < YEAR; s++) {
      sum += plainWalk(netKwh, s, 72, 8, 6).unservedKwh * 0.9 + 3 * 0.7;
    }
    expect(got.months[11]).toBeCloseTo(sum / 744, 9);
  });
});
