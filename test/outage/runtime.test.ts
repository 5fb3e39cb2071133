import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { batteryRuntime } from '../../src/outage/runtime';

const flat = (watts: number) => new Array<number>(24).fill(watts);
const plain = { inverterIdleWatts: 0, dischargeEfficiency: 1 };

describe('hours a battery lasts against a repeated day', () => {
  it('is energy over power for a flat load, whenever the outage starts', () => {
    const run = batteryRuntime({
      usableKwh: 10,
      loadWattsByHour: flat(350),
      inverterIdleWatts: 50,
      dischargeEfficiency: 0.92,
    });
    const hours = 10 / (0.35 / 0.92 + 0.05);
    for (const each of run.hoursByStart) expect(each).toBeCloseTo(hours, 9);
    expect(run.shortestHours).toBeCloseTo(hours, 9);
    expect(run.longestHours).toBeCloseTo(hours, 9);
  });

  it('counts the last hour by the share it could still serve', () => {
    // 3 kWh against 1 kW by day (hours 6-17) and 0.5 kW by night, start 16:00: 1 + 1 + 0.5 + 0.5
    const load = flat(500).map((w, h) => (h >= 6 && h < 18 ? 1000 : w));
    const run = batteryRuntime({ usableKwh: 3, loadWattsByHour: load, ...plain });
    expect(run.hoursByStart[16]).toBeCloseTo(4, 12);
    expect(run.hoursByStart[6]).toBeCloseTo(3, 12);
    expect(run.hoursByStart[20]).toBeCloseTo(6, 12);
    expect(run.shortestHours).toBeCloseTo(3, 12);
    expect(run.longestHours).toBeCloseTo(6, 12);
  });

  it('does not end when the sun gives back each day what the night takes', () => {
    const solar = flat(0).map((w, h) => (h >= 8 && h < 16 ? 2000 : w));
    const input = { loadWattsByHour: flat(400), solarWattsByHour: solar, ...plain };
    expect(batteryRuntime({ usableKwh: 10, ...input }).shortestHours).toBeNull();
    // too small for the 16 dark hours at 0.4 kW: from 16:00 on, 5 / 0.4 h
    expect(batteryRuntime({ usableKwh: 5, ...input }).hoursByStart[16]).toBeCloseTo(12.5, 12);
  });

  it('runs on the sun alone by day when there is no battery', () => {
    const solar = flat(0).map((w, h) => (h >= 8 && h < 16 ? 2000 : w));
    const input = { usableKwh: 0, loadWattsByHour: flat(400), solarWattsByHour: solar, ...plain };
    const run = batteryRuntime(input);
    expect(run.hoursByStart[8]).toBe(8);
    expect(run.hoursByStart[16]).toBe(0);
    expect(run.typicalHours).toBe(0);
  });

  it('gives 0 hours for no battery, and no end for no load', () => {
    expect(batteryRuntime({ usableKwh: 0, loadWattsByHour: flat(1), ...plain }).longestHours).toBe(
      0,
    );
    expect(
      batteryRuntime({ usableKwh: 1, loadWattsByHour: flat(0), ...plain }).shortestHours,
    ).toBeNull();
  });

  it('never gets shorter with more battery or more sun', () => {
    const watts = fc.array(fc.integer({ min: 0, max: 3000 }), { minLength: 24, maxLength: 24 });
    const kwh = fc.double({ min: 0, max: 40, noNaN: true });
    fc.assert(
      fc.property(watts, watts, kwh, kwh, (load, sun, usable, more) => {
        const rest = { loadWattsByHour: load, inverterIdleWatts: 30, dischargeEfficiency: 0.92 };
        const base = batteryRuntime({ usableKwh: usable, ...rest });
        const bigger = batteryRuntime({ usableKwh: usable + more, ...rest });
        const sunny = batteryRuntime({ usableKwh: usable, solarWattsByHour: sun, ...rest });
        for (let h = 0; h < 24; h++) {
          const hours = base.hoursByStart[h] ?? Infinity;
          expect(bigger.hoursByStart[h] ?? Infinity).toBeGreaterThanOrEqual(hours - 1e-9);
          expect(sunny.hoursByStart[h] ?? Infinity).toBeGreaterThanOrEqual(hours - 1e-9);
        }
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it('refuses a profile of the wrong length, a negative watt and a share over one', () => {
    const input = { usableKwh: 1, loadWattsByHour: flat(1), ...plain };
    expect(() => batteryRuntime({ ...input, loadWattsByHour: [1] })).toThrow(/24 hours: it has 1/);
    expect(() => batteryRuntime({ ...input, loadWattsByHour: flat(-1) })).toThrow(/-1 W/);
    expect(() => batteryRuntime({ ...input, dischargeEfficiency: 1.2 })).toThrow(/1.2/);
    expect(() => batteryRuntime({ ...input, usableKwh: Number.NaN })).toThrow(/NaN kWh/);
  });
});
