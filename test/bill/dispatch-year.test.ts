import { describe, expect, test } from 'vitest';
import { ceilingYear } from '../../src/bill/dispatch/ceiling-year';
import {
  dispatchYear,
  keptInstead,
  type Strategy,
  settingOfYear,
} from '../../src/bill/dispatch/dispatch-year';
import { reserveCost } from '../../src/bill/dispatch/reserve-cost';
import { demoTariff } from '../../src/bill/tariff/demo-tariffs';
import { demoSetting } from '../bench/bench-dispatch';

const strategies: Strategy[] = ['self-use', 'time-shift', 'both', 'peak-limit'];

describe('a year under tariff B with solar', () => {
  const setting = demoSetting('B');
  const ceiling = ceilingYear(setting);

  test('no rule saves more than the ceiling, and the day-ahead rule most of it', () => {
    for (const strategy of strategies) {
      expect(dispatchYear(setting, strategy).savings, strategy).toBeLessThan(
        ceiling.savings + 1e-6,
      );
    }
    expect(dispatchYear(setting, 'both').savings).toBeGreaterThan(0.75 * ceiling.savings);
    expect(ceiling.notExact).toBeNull();
  });

  test('every hour balances and the charge stays between floor and top', () => {
    for (const strategy of strategies) {
      const { dispatch } = dispatchYear(setting, strategy);
      const { loadKwh, solarKwh, floorKwh } = setting.problem;
      const wrong: number[] = [];
      for (let h = 0; h < 8760; h++) {
        const came = dispatch.importKwh[h]! + solarKwh[h]! + dispatch.dischargeKwh[h]!;
        const went =
          loadKwh[h]! + dispatch.exportKwh[h]! + dispatch.curtailedKwh[h]! + dispatch.chargeKwh[h]!;
        const stored = dispatch.storedKwh[h]!;
        const within = stored >= floorKwh[h]! - 1e-9 && stored <= 10 + 1e-9;
        if (!(Math.abs(came - went) < 1e-9 && within)) wrong.push(h);
      }
      expect(wrong, strategy).toEqual([]);
    }
  });
});

test('what is done in an hour does not depend on any later hour', () => {
  const setting = demoSetting('D');
  const changed = Float64Array.from(setting.problem.loadKwh, (kwh, h) =>
    h < 4000 ? kwh : 2 * kwh,
  );
  const other = { ...setting, problem: { ...setting.problem, loadKwh: changed } };
  const first = dispatchYear(setting, 'peak-limit').dispatch.storedKwh.subarray(0, 4001);
  const second = dispatchYear(other, 'peak-limit').dispatch.storedKwh.subarray(0, 4001);
  expect(second).toEqual(first);
});

test('a flat price leaves a battery nothing to save, and after the first day it rests', () => {
  const setting = demoSetting('A');
  const year = dispatchYear(setting, 'both');
  expect(ceilingYear(setting).savings).toBeCloseTo(0, 6);
  expect(Math.max(...year.dispatch.dischargeKwh.subarray(48))).toBe(0);
  expect(Math.abs(year.savings)).toBeLessThan(1);
});

test('wear that costs more than the gap stops the battery from cycling', () => {
  const { input } = demoSetting('B', false);
  const worn = settingOfYear({ ...input, battery: { ...input.battery, wearPerKwh: 0.5 } });
  expect(dispatchYear(worn, 'both').wear).toBeLessThan(0.5);
});

test('a month that keeps more for outages is met from the hour the battery could reach it', () => {
  const { input } = demoSetting('B');
  const floorKwhByMonth = [8, 8, 8, 2, 2, 2, 2, 2, 2, 2, 9, 9];
  const setting = settingOfYear({ ...input, floorKwhByMonth });
  const { storedKwh } = dispatchYear(setting, 'both').dispatch;
  const november = (31 + 28 + 31 + 30 + 31 + 30 + 31 + 31 + 30 + 31) * 24;
  expect(storedKwh[november + 4]!).toBeGreaterThanOrEqual(9 - 1e-9);
  expect(Math.min(...storedKwh.subarray(november + 4))).toBeGreaterThanOrEqual(9 - 1e-9);
});

test('a battery that is kept whole for outages all year saves nothing and wears nothing, by any rule', () => {
  const { input } = demoSetting('B');
  const floorKwhByMonth = Array(12).fill(input.battery.usableKwh);
  const setting = settingOfYear({ ...input, floorKwhByMonth });
  for (const strategy of strategies) {
    const { savings, wear, dispatch } = dispatchYear(setting, strategy);
    expect([savings, wear], strategy).toEqual([0, 0]);
    // What the rule itself makes of it, asked hour by hour.
    const nearly = {
      ...setting.problem,
      floorKwh: Float64Array.from(setting.problem.floorKwh, (kwh) => kwh - 1e-9),
    };
    const ruled = dispatchYear({ ...setting, problem: nearly }, strategy);
    expect(ruled.savings, strategy).toBeCloseTo(0, 6);
    expect(ruled.dispatch.importKwh[100]).toBeCloseTo(dispatch.importKwh[100]!, 6);
  }
});

test('other charge kept gives the year that is laid out for it anew', () => {
  const { input } = demoSetting('B');
  const floorKwhByMonth = [8, 8, 8, 2, 2, 2, 2, 2, 2, 2, 9, 9];
  const anew = settingOfYear({ ...input, floorKwhByMonth });
  const instead = keptInstead(settingOfYear(input), floorKwhByMonth);
  expect(instead.problem.floorKwh).toEqual(anew.problem.floorKwh);
  expect(instead.input.floorKwhByMonth).toEqual(floorKwhByMonth);
  const [one, other] = [instead, anew].map((setting) => dispatchYear(setting, 'both'));
  expect([one!.savings, one!.wear]).toEqual([other!.savings, other!.wear]);
});

describe('what the reserve costs', () => {
  const { input } = demoSetting('B');
  const { floorKwhByMonth: _, ...rest } = input;
  const levels = reserveCost(rest, { strategy: 'both', chosen: 0.3 });

  test('five levels and the choice of the household, marked', () => {
    expect(levels.map((l) => l.share)).toEqual([0, 0.2, 0.3, 0.4, 0.6, 0.8]);
    expect(levels.filter((l) => l.chosen).map((l) => l.share)).toEqual([0.3]);
    expect(levels[0]!.cost).toBe(0);
  });

  test('keeping more never saves more', () => {
    for (let i = 1; i < levels.length; i++) {
      expect(levels[i]!.savings).toBeLessThan(levels[i - 1]!.savings);
    }
  });
});

test('with a demand charge the ceiling holds the peak down and beats every rule', () => {
  const setting = demoSetting('D', false);
  const ceiling = ceilingYear(setting);
  for (const strategy of strategies) {
    expect(dispatchYear(setting, strategy).savings, strategy).toBeLessThan(ceiling.savings);
  }
  expect(demoTariff('D').demand).toHaveLength(1);
});

test('a month that keeps far less than the one before has a ceiling too: no battery is emptied in an hour', () => {
  const { input } = demoSetting('D', false);
  const floorKwhByMonth = [10, 10, 10, 0, 0, 0, 10, 0, 0, 0, 10, 10];
  const battery = { ...input.battery, dischargeKw: 1 };
  const setting = settingOfYear({ ...input, battery, floorKwhByMonth });
  const { dispatch, savings } = ceilingYear(setting);
  expect(dispatchYear(setting, 'both').savings).toBeLessThan(savings);
  dispatch.storedKwh.forEach((kwh, h) => {
    if (kwh < setting.problem.floorKwh[h]! - 1e-9) throw new Error(`below the floor at ${h}`);
  });
});

test('a tariff is laid out on the same days once, whatever the reserve, and anew on others', () => {
  const { input, layout } = demoSetting('B');
  const reserved = settingOfYear({ ...input, floorKwhByMonth: Array(12).fill(1) });
  const again = settingOfYear(input);
  expect(reserved.layout).toBe(again.layout);
  const [first, ...rest] = input.days;
  const others = settingOfYear({ ...input, days: [...rest, first!] });
  expect(others.layout).not.toBe(again.layout);
  expect(again.layout).toEqual(layout);
});
