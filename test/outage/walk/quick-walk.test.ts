import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { manyWalks } from '../../../src/outage/walk/many-walks';
import { quickWalk } from '../../../src/outage/walk/quick-walk';
import type { WalkSystem } from '../../../src/outage/walk/system';
import { walkOutage } from '../../../src/outage/walk/walk';
import { always, between, generator, limits, madeUpRecord } from './made-up-system';

const size = fc.record({
  seed: fc.integer({ min: 1, max: 1e6 }),
  capKwh: fc.double({ min: 0, max: 20, noNaN: true }),
  dischargeKw: fc.double({ min: 0.8, max: 5, noNaN: true }),
  fuelAtStart: fc.double({ min: 0, max: 30, noNaN: true }),
  ratedKw: fc.double({ min: 0.5, max: 5, noNaN: true }),
  hours: fc.integer({ min: 1, max: 12 }),
  refillEveryHours: fc.constantFrom(24, 72, Infinity),
  sunKw: fc.double({ min: 0, max: 3, noNaN: true }),
  cold: fc.boolean(),
});

/** A battery and a generator that refills it, with a made-up record of loads and sun. */
function both(drawn: Drawn) {
  const { seed, capKwh, dischargeKw, hours, sunKw, cold, ...own } = drawn;
  const made = madeUpRecord(20, seed, sunKw, 0.6);
  const mayCharge = Uint8Array.from(made.solarKw, (_, t) => (t % 240 < 200 ? 1 : 0));
  const system: WalkSystem = {
    battery: { capKwh, limits: { ...limits, dischargeKw } },
    generator: {
      ...generator,
      ...own,
      refill: 5,
      tankSize: 30,
      runsByHour: between(6, 6 + hours),
    },
    vehicle: null,
    ladder: [],
  };
  const record = {
    loadsKw: [made.loadsKw[0]!],
    solarKw: made.solarKw,
    ...(cold && { mayCharge }),
  };
  return { system, record };
}

type Drawn = typeof size extends fc.Arbitrary<infer T> ? T : never;

/** The same to the last place: asked thousands of times, which `expect` is slow for. */
function expectSame(some: object, others: object): void {
  if (!isDeepStrictEqual(some, others)) expect(some).toEqual(others);
}

it('a quick walk ends in the same hour, for the same reason and with the same stores left', () => {
  const reasons = new Set<string | null>();
  fc.assert(
    fc.property(size, (drawn) => {
      const { system, record } = both(drawn);
      for (let start = 0; start < 480; start += 7) {
        const input = { system, record, start, outageHours: 200, startKwh: 15, untilFailure: true };
        const walked = walkOutage(input);
        expectSame(quickWalk(input), walked);
        reasons.add(walked.failure);
      }
    }),
    { seed: 20261125, numRuns: 60 },
  );
  expect(reasons).toEqual(new Set([null, 'battery-empty', 'fuel-gone', 'power-limit']));
});

it('neither does that of an engine alone', () => {
  const reasons = new Set<string | null>();
  fc.assert(
    fc.property(size, fc.boolean(), ({ seed, hours, ...own }, allDay) => {
      const made = madeUpRecord(20, seed, 0, 0.6);
      const runsByHour = allDay ? always : between(6, 6 + hours);
      const system: WalkSystem = {
        battery: null,
        generator: { ...generator, ...own, refill: 5, tankSize: 30, runsByHour },
        vehicle: null,
        ladder: [],
      };
      // The second class of loads is off in most hours.
      for (const loadKw of made.loadsKw) {
        const record = { loadsKw: [loadKw], solarKw: made.solarKw };
        for (let start = 0; start < 480; start += 7) {
          const input = {
            system,
            record,
            start,
            outageHours: 200,
            startKwh: 0,
            untilFailure: true,
          };
          const walked = walkOutage(input);
          expectSame(quickWalk(input), walked);
          reasons.add(walked.failure);
        }
      }
    }),
    { seed: 20261125, numRuns: 60 },
  );
  expect(reasons).toEqual(new Set([null, 'engine-off', 'fuel-gone', 'power-limit']));
});

it('many walks that leap from full to full end as each walk does by itself', () => {
  const reasons = new Set<string | null>();
  let partly = 0;
  fc.assert(
    fc.property(size, (drawn) => {
      const { system, record } = both(drawn);
      const walk = manyWalks(system, record);
      for (const startKwh of [drawn.capKwh, drawn.capKwh / 2]) {
        for (let start = 0; start < 480; start += 7) {
          const outage = { start, outageHours: 200, startKwh };
          const walked = walkOutage({ system, record, ...outage, untilFailure: true });
          const { left, unservedKwh, ...leapt } = walk(outage);
          const { left: leftThere, unservedKwh: unservedThere, ...there } = walked;
          const gaps = [
            unservedKwh - unservedThere,
            left.chargeKwh - leftThere.chargeKwh,
            left.fuel - leftThere.fuel,
          ].map(Math.abs);
          expectSame(leapt, there);
          expect(Math.max(...gaps)).toBeLessThan(5e-9);
          reasons.add(walked.failure);
          if (walked.hoursServed > 24 && walked.hoursServed < 200) partly += 1;
        }
      }
    }),
    { seed: 20261125, numRuns: 60 },
  );
  expect(reasons).toEqual(new Set([null, 'battery-empty', 'fuel-gone', 'power-limit']));
  expect(partly).toBeGreaterThan(300);
});

it('two systems walked by turns end as each does by itself', () => {
  fc.assert(
    fc.property(size, size, (one, other) => {
      const pair = [one, other].map((drawn) =>
        both({ ...drawn, sunKw: 3, refillEveryHours: Infinity }),
      );
      const walks = pair.map(({ system, record }) => manyWalks(system, record));
      for (let start = 0; start < 480; start += 35) {
        const outage = { start, outageHours: 200 };
        pair.forEach((way, i) => {
          const startKwh = way.system.battery!.capKwh;
          const alone = walkOutage({ ...way, ...outage, startKwh, untilFailure: true });
          expect(walks[i]!({ ...outage, startKwh }).hoursServed).toBe(alone.hoursServed);
        });
      }
    }),
    { seed: 20261129, numRuns: 20 },
  );
});
