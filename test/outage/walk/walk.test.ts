import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chargeForEveryStart } from '../../../src/outage/every-start';
import { netEnergy } from '../../../src/outage/net-energy';
import type { WalkRecord, WalkSystem } from '../../../src/outage/walk/system';
import { type WalkedHour, walkOutage } from '../../../src/outage/walk/walk';
import {
  always,
  batteryOnly,
  between,
  generator,
  limits,
  madeUpRecord,
  vehicle,
} from './made-up-system';

const flat = (kw: number, days = 20): WalkRecord => ({
  loadsKw: [new Float64Array(24 * days).fill(kw), new Float64Array(24 * days)],
  solarKw: new Float64Array(24 * days),
});
const alone = { battery: null, generator: null, vehicle: null, ladder: [] };

describe('an outage walked hour by hour', () => {
  it('agrees with the passes when nothing depends on charge or time', () => {
    const made = madeUpRecord(30, 5, 4, 0.6);
    const mayCharge = Uint8Array.from(made.solarKw, (_, t) => (t % 240 < 200 ? 1 : 0));
    const record = { ...made, mayCharge };
    const tight = { ...limits, dischargeKw: 1.2 };
    const loadKw = made.loadsKw[0]!.map((kw, t) => kw + made.loadsKw[1]![t]!);
    const { netKwh, overloadKwh } = netEnergy({
      loadKw,
      supplyKw: made.solarKw,
      mayCharge,
      limits: tight,
    });
    const needed = chargeForEveryStart(netKwh, 48, 7);
    const system: WalkSystem = { ...alone, battery: { capKwh: 7, limits: tight } };
    for (let start = 0; start < 720; start++) {
      const walked = walkOutage({ system, record, start, outageHours: 48, startKwh: 5 });
      const empty = needed.unavoidableKwh[start]! + Math.max(0, needed.thresholdKwh[start]! - 5);
      let over = 0;
      for (let k = 0; k < 48; k++) over += overloadKwh[(start + k) % 720]!;
      expect(walked.unservedKwh).toBeCloseTo(empty * 0.92 + over, 9);
    }
  });

  it('empties a battery against a flat load after energy over power', () => {
    // 10 kWh at 1 / 0.92 + 0.04 kWh an hour: 8.87 hours
    const walked = walkOutage({
      system: batteryOnly(10),
      record: flat(1),
      start: 0,
      outageHours: 24,
      startKwh: 10,
    });
    expect(walked.hoursServed).toBe(Math.floor(10 / (1 / 0.92 + 0.04)));
    expect(walked.failure).toBe('battery-empty');
    expect(walked.unservedHours).toBe(24 - 8);
    expect(walked.left.chargeKwh).toBe(0);
  });

  it('runs an engine by timetable, counts what goes without, and stops when the fuel is gone', () => {
    const input = { record: flat(1), start: 0, outageHours: 24, startKwh: 0 };
    const byDay = walkOutage({ ...input, system: { ...alone, generator } });
    expect([byDay.hoursServed, byDay.failure]).toEqual([0, 'engine-off']);
    expect(byDay.unservedHours).toBe(20);
    expect(byDay.left.fuel).toBeCloseTo(10 - 4 * (0.25 + 0.11), 9);
    // all hours at 0.36 gal: 10 gal are 27.8 hours
    const all = { ...generator, runsByHour: always };
    const long = walkOutage({ ...input, outageHours: 48, system: { ...alone, generator: all } });
    expect([long.hoursServed, long.failure]).toEqual([Math.floor(10 / 0.36), 'fuel-gone']);
    expect(long.unservedKwh).toBeCloseTo(48 - 10 / 0.36, 9);
  });

  it('refills on time, never beyond the tank', () => {
    const refilled = {
      ...generator,
      runsByHour: always,
      fuelAtStart: 9,
      refill: 5,
      refillEveryHours: 24,
    };
    const fuels: number[] = [];
    const walked = walkOutage({
      system: { ...alone, generator: refilled },
      record: flat(1),
      start: 0,
      outageHours: 49,
      startKwh: 0,
      onHour: ({ fuel }) => fuels.push(fuel),
    });
    expect(fuels[23]).toBeCloseTo(9 - 24 * 0.36, 9);
    expect(fuels[24]).toBeCloseTo(9 - 24 * 0.36 + 5 - 0.36, 9);
    expect(walked.failure).toBe('fuel-gone');
    expect(walked.hoursServed).toBe(Math.floor(14 / 0.36)); // 14 gal by hour 38, the next can at 48
  });

  it('fills the battery with what the engine has left over', () => {
    const system = { ...batteryOnly(10), generator: { ...generator, runsByHour: between(0, 2) } };
    const charges: number[] = [];
    walkOutage({
      system,
      record: flat(0.5),
      start: 0,
      outageHours: 2,
      startKwh: 0,
      onHour: ({ chargeKwh }) => charges.push(chargeKwh),
    });
    // 4 kW: 0.5 to the house, 3 (the limit) to the charger
    expect(charges[0]).toBeCloseTo(3 * 0.92 - 0.04, 9);
    expect(charges[1]).toBeCloseTo(2 * (3 * 0.92 - 0.04), 9);
  });

  it('takes the vehicle only while it is at home, within its power and its store', () => {
    const input = { record: flat(1), start: 0, outageHours: 72, startKwh: 0 };
    const away = walkOutage({ ...input, system: { ...alone, vehicle } });
    expect([away.hoursServed, away.failure]).toEqual([8, 'vehicle-away']);
    const here = { ...vehicle, homeByHour: always };
    const all = walkOutage({ ...input, system: { ...alone, vehicle: here } });
    expect(all.hoursServed).toBe(Math.floor(30 * 0.85));
    const strong = walkOutage({ ...input, record: flat(2.5), system: { ...alone, vehicle: here } });
    expect(strong.unservedKwh).toBeGreaterThan(72 * 0.7 - 1e-9); // 1.8 of 2.5 kW at most
  });

  it('sheds the good to have below its charge and takes it back above', () => {
    const record = flat(0.4);
    record.loadsKw[1]!.fill(0.6);
    const ladder = [{ load: 1, offBelow: 0.5 }];
    const hours: WalkedHour[] = [];
    const walked = walkOutage({
      system: { ...batteryOnly(10), ladder },
      record,
      start: 0,
      outageHours: 48,
      startKwh: 10,
      onHour: (hour) => hours.push(hour),
    });
    for (const [i, hour] of hours.entries()) {
      const before = i === 0 ? 10 : hours[i - 1]!.chargeKwh;
      expect(hour.shedKwh).toBe(before < 5 ? 0.6 : 0);
    }
    const all = walkOutage({
      system: batteryOnly(10),
      record,
      start: 0,
      outageHours: 48,
      startKwh: 10,
    });
    expect(walked.hoursServed).toBeGreaterThan(all.hoursServed);
  });

  it('never serves fewer hours with more battery, sun or fuel, without a ladder', () => {
    const seed = fc.nat();
    const kwh = fc.double({ min: 0, max: 15, noNaN: true });
    const home = fc.record({
      seed,
      kwh,
      moreKwh: kwh,
      sun: fc.double({ min: 0, max: 4, noNaN: true }),
      moreSun: fc.double({ min: 0, max: 2, noNaN: true }),
      fuel: kwh,
      moreFuel: kwh,
      car: fc.boolean(),
      motor: fc.boolean(),
    });
    fc.assert(
      fc.property(home, (h) => {
        const served = (capKwh: number, sunKw: number, fuelAtStart: number) => {
          const record = madeUpRecord(20, h.seed, sunKw, 0.7);
          const system: WalkSystem = {
            battery: { capKwh, limits },
            generator: h.motor ? { ...generator, fuelAtStart } : null,
            vehicle: h.car ? vehicle : null,
            ladder: [],
          };
          return [0, 9, 50, 131].map(
            (start) =>
              walkOutage({ system, record, start, outageHours: 336, startKwh: capKwh }).hoursServed,
          );
        };
        const base = served(h.kwh, h.sun, h.fuel);
        const better = [
          served(h.kwh + h.moreKwh, h.sun, h.fuel),
          served(h.kwh, h.sun + h.moreSun, h.fuel),
          served(h.kwh, h.sun, h.fuel + h.moreFuel),
        ];
        for (const hours of better) {
          hours.forEach((value, i) => {
            expect(value).toBeGreaterThanOrEqual(base[i]!);
          });
        }
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });

  it('with a ladder, more battery or sun fails only once less came within one hour of shed load', () => {
    const shedMost = 0.8;
    const slack = shedMost / limits.dischargeEfficiency;
    let fell = 0;
    const home = fc.record({
      seed: fc.nat(),
      kwh: fc.double({ min: 2, max: 15, noNaN: true }),
      more: fc.double({ min: 0, max: 1, noNaN: true }),
      sun: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 8, noNaN: true })),
      moreSun: fc.double({ min: 0, max: 0.5, noNaN: true }),
      offBelow: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
    });
    fc.assert(
      fc.property(home, ({ seed, kwh, more, sun, moreSun, offBelow }) => {
        const walk = (capKwh: number, sunKw: number) => {
          const record = madeUpRecord(6, seed, sunKw, 0.2);
          record.loadsKw[1]!.fill(shedMost);
          const system = { ...batteryOnly(capKwh), ladder: [{ load: 1, offBelow }] };
          const charges: number[] = [];
          const { hoursServed } = walkOutage({
            system,
            record,
            start: 17,
            outageHours: 96,
            startKwh: capKwh,
            onHour: ({ chargeKwh }) => charges.push(chargeKwh),
          });
          const thin = charges.findIndex((charge) => charge <= slack);
          return { hoursServed, safeHours: thin < 0 ? 96 : thin };
        };
        const less = walk(kwh, sun);
        for (const better of [walk(kwh + more, sun), walk(kwh, sun + moreSun)]) {
          expect(better.hoursServed).toBeGreaterThanOrEqual(less.safeHours);
          if (better.hoursServed < less.hoursServed) fell += 1;
        }
      }),
      { seed: 20261125, numRuns: 1000 },
    );
    expect(fell).toBeGreaterThan(0); // it does happen: the bound is not idle
  });

  it('gives plain results with no source, no load and nothing left', () => {
    const input = { start: 0, outageHours: 24, startKwh: 0 };
    const none = walkOutage({ ...input, record: flat(1), system: alone });
    expect([none.hoursServed, none.failure, none.unservedKwh]).toEqual([0, 'no-source', 24]);
    const idle = walkOutage({ ...input, record: flat(0), system: alone });
    expect([idle.hoursServed, idle.failure]).toEqual([24, null]);
    const empty = walkOutage({ ...input, record: flat(1), system: batteryOnly(0) });
    expect(empty.hoursServed).toBe(0);
    expect(Number.isFinite(empty.unservedKwh)).toBe(true);
    const dry = { ...alone, generator: { ...generator, fuelAtStart: 0 } };
    expect(walkOutage({ ...input, record: flat(1), system: dry }).failure).toBe('fuel-gone');
    const piped = {
      ...alone,
      generator: { ...generator, fuelAtStart: Infinity, runsByHour: always },
    };
    const gas = walkOutage({ ...input, record: flat(1), system: piped });
    expect([gas.failure, gas.unservedKwh]).toEqual([null, 0]);
  });

  it('refuses a record that is not whole days and a rung for what must keep running', () => {
    const input = { start: 0, outageHours: 24, startKwh: 0 };
    const half = { loadsKw: [new Float64Array(12)], solarKw: new Float64Array(12) };
    expect(() => walkOutage({ ...input, record: half, system: alone })).toThrow(/whole days: 12 h/);
    const ladder = [{ load: 0, offBelow: 0.5 }];
    expect(() => walkOutage({ ...input, record: flat(1), system: { ...alone, ladder } })).toThrow(
      /load 1 to 1: 0/,
    );
  });
});

describe('cells too cold to charge', () => {
  const left = (solarKw: number, system: Partial<WalkSystem> = {}) => {
    const made = flat(0.5);
    made.solarKw.fill(solarKw);
    const record = { ...made, mayCharge: new Uint8Array(made.solarKw.length) };
    const outage = { record, start: 0, outageHours: 10, startKwh: 5 };
    return walkOutage({ system: { ...batteryOnly(10), ...system }, ...outage }).left;
  };

  it('take nothing, while sun carries the load and the inverter’s own draw', () => {
    expect(left(2).chargeKwh).toBeCloseTo(5, 12);
    expect(left(0.5).chargeKwh).toBeCloseTo(5 - 10 * 0.04, 12);
    // 0.02 kW of sun beside the load carries its part of the draw.
    expect(left(0.52).chargeKwh).toBeCloseTo(5 - 10 * (0.04 - 0.92 * 0.02), 12);
  });

  it('lose nothing to the inverter’s own draw while an engine runs either, which burns for it', () => {
    const running = { ...generator, runsByHour: always };
    const { chargeKwh, fuel } = left(0, { generator: running });
    expect(chargeKwh).toBeCloseTo(5, 12);
    expect(fuel).toBeCloseTo(10 - 10 * (0.25 + 0.11 * (0.5 + 0.04 / 0.92)), 12);
  });
});
