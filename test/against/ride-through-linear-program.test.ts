import fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { chargeForEveryStart, neededForEveryStart } from '../../src/outage/every-start';
import { netEnergy, type StoreLimits } from '../../src/outage/net-energy';

const highs = await loadHighs();

interface Case {
  load: readonly number[];
  supply: readonly number[];
  cap: number;
  start: number;
  limits: StoreLimits;
}

/**
 * Least energy not served, kWh at the house, when a planner who knows every hour to come may charge,
 * discharge, spill and shed as it likes: a linear program, solved by HiGHS (Huangfu & Hall 2018).
 *   min sum u + eta_d sum v   s.t.   supply - w + d + u - c = load
 *        s' = s + eta_c c - d / eta_d - idle + v     0 <= s <= cap, c <= P_c, d <= P_d, v <= idle
 * where u is load and v the inverter's own draw that goes unserved.
 */
function leastUnserved({ load, supply, cap, start, limits }: Case): number {
  const rows: string[] = [];
  const bounds: string[] = [];
  load.forEach((kw, t) => {
    const wanted = kw - supply[t]!;
    rows.push(` b${t}: d${t} + u${t} - c${t} - w${t} = ${wanted}`);
    const before = t === 0 ? '' : ` - s${t - 1}`;
    const right = (t === 0 ? start : 0) - limits.idleKw;
    rows.push(
      ` e${t}: s${t}${before} - ${limits.chargeEfficiency} c${t} + ${1 / limits.dischargeEfficiency} d${t} - v${t} = ${right}`,
    );
    bounds.push(
      ` 0 <= s${t} <= ${cap}`,
      ` 0 <= w${t} <= ${supply[t]!}`,
      ` 0 <= v${t} <= ${limits.idleKw}`,
    );
    bounds.push(` 0 <= c${t} <= ${limits.chargeKw}`, ` 0 <= d${t} <= ${limits.dischargeKw}`);
  });
  const aim = load.map((_, t) => `u${t} + ${limits.dischargeEfficiency} v${t}`).join(' + ');
  const text = `Minimize\n obj: ${aim}\nSubject To\n${rows.join('\n')}\nBounds\n${bounds.join('\n')}\nEnd`;
  const solved = highs.solve(text);
  expect(solved.Status).toBe('Optimal');
  return solved.ObjectiveValue;
}

const kw = (max: number) =>
  fc.double({ min: 0, max, noNaN: true }).map((x) => Number(x.toFixed(3)));
const aCase: fc.Arbitrary<Case> = fc.integer({ min: 2, max: 30 }).chain((hours) =>
  fc.record({
    load: fc.array(kw(2), { minLength: hours, maxLength: hours }),
    supply: fc.array(fc.oneof(fc.constant(0), kw(5)), { minLength: hours, maxLength: hours }),
    cap: kw(15),
    start: fc.constant(0),
    limits: fc.record({
      chargeKw: kw(3),
      dischargeKw: kw(2.5),
      chargeEfficiency: fc.constantFrom(0.8, 0.92, 1),
      dischargeEfficiency: fc.constantFrom(0.8, 0.92, 1),
      idleKw: kw(0.1),
    }),
  }),
);

describe('riding through, against a linear program solved by HiGHS', () => {
  it('is possible for the walk exactly when it is possible for a planner with foresight', () => {
    let rode = 0;
    let failed = 0;
    fc.assert(
      fc.property(aCase, fc.double({ min: 0, max: 1, noNaN: true }), (made, full) => {
        const start = Number((made.cap * full).toFixed(3));
        const { load, supply, cap, limits } = made;
        const hours = {
          loadKw: Float64Array.from(load),
          supplyKw: Float64Array.from(supply),
          limits,
        };
        const { netKwh, overloadKwh } = netEnergy(hours);
        const charge = chargeForEveryStart(netKwh, load.length, cap);
        const stored = charge.unavoidableKwh[0]! + Math.max(0, charge.thresholdKwh[0]! - start);
        const overload = overloadKwh.reduce((sum, kwh) => sum + kwh, 0);
        const ours = stored * limits.dischargeEfficiency + overload;
        const least = leastUnserved({ ...made, start });
        // HiGHS keeps rows to 1e-7; 30 rows
        expect(ours).toBeCloseTo(least, 5);
        expect(ours < 1e-5).toBe(least < 1e-5);
        if (ours < 1e-5) rode += 1;
        else failed += 1;
      }),
      { seed: 20261125, numRuns: 200 },
    );
    // both answers must come up, or the check says nothing
    expect(rode).toBeGreaterThan(20);
    expect(failed).toBeGreaterThan(20);
  });

  it('needs, from full, the storage below which the program has no answer', () => {
    let seen = 0;
    fc.assert(
      fc.property(aCase, (made) => {
        const { load, supply } = made;
        const limits = { ...made.limits, dischargeKw: 5 };
        const hours = {
          loadKw: Float64Array.from(load),
          supplyKw: Float64Array.from(supply),
          limits,
        };
        const needed = neededForEveryStart(netEnergy(hours).netKwh, load.length)[0]!;
        const least = (cap: number) => leastUnserved({ ...made, limits, cap, start: cap });
        expect(least(needed)).toBeLessThan(1e-5);
        if (needed < 0.1) return;
        seen += 1;
        expect(least(needed - 0.01)).toBeGreaterThan(0.01 * 0.79);
      }),
      { seed: 20261125, numRuns: 100 },
    );
    expect(seen).toBeGreaterThan(50);
  });

  it('counts an engine whose hours are fixed as supply on both sides', () => {
    const load = new Array<number>(24).fill(0.8);
    const generator = load.map((_, t) => (t >= 6 && t < 10 ? 4 : 0));
    const limits = {
      chargeKw: 2.5,
      dischargeKw: 5,
      chargeEfficiency: 0.92,
      dischargeEfficiency: 0.92,
      idleKw: 0.04,
    };
    const hours = {
      loadKw: Float64Array.from(load),
      supplyKw: Float64Array.from(generator),
      limits,
    };
    const needed = neededForEveryStart(netEnergy(hours).netKwh, 24)[0]!;
    // 14 dark hours after the generator's morning are the deepest fall: 14 x (0.8 / 0.92 + 0.04)
    expect(needed).toBeCloseTo(14 * (0.8 / 0.92 + 0.04), 9);
    const made = { load, supply: generator, limits };
    expect(leastUnserved({ ...made, cap: needed, start: needed })).toBeLessThan(1e-5);
    expect(leastUnserved({ ...made, cap: needed - 0.1, start: needed - 0.1 })).toBeGreaterThan(
      0.05,
    );
  });
});
