import { expect, test } from 'vitest';
import { apparentPowerVa } from '../../src/physics/apparent-power';
import { batteryKwhForHours, batteryRuntimeHours } from '../../src/physics/battery-runtime';
import { chargingTime } from '../../src/physics/charging-time';
import { motorRunning, motorRunningFromAmps } from '../../src/physics/motor-running';

test('600 W at a power factor of 0.75 is 800 VA', () => {
  expect(apparentPowerVa({ watts: 600, powerFactor: 0.75 })).toBe(800);
});

test('one shaft horsepower at 80 % and 0.8 draws 932 W and 1165 VA', () => {
  const run = motorRunning({ shaftHp: 1, efficiency: 0.8, powerFactor: 0.8, volts: 240 });
  expect(run.watts).toBeCloseTo(745.7 / 0.8, 9);
  expect(run.va).toBeCloseTo(745.7 / 0.64, 9);
  expect(run.amps).toBeCloseTo(745.7 / 0.64 / 240, 9);
});

test('8 A on a 120 V plate at 0.75 is 960 VA and 720 W', () => {
  const run = motorRunningFromAmps({ amps: 8, volts: 120, powerFactor: 0.75 });
  expect(run).toEqual({ watts: 720, va: 960, amps: 8 });
});

test('a 35 W device on an inverter that idles at 30 W lasts about half as long as without the idle draw', () => {
  const pack = { usableKwh: 1, loadWatts: 35, dischargeEfficiency: 1 };
  const withIdle = batteryRuntimeHours({ ...pack, idleWatts: 30 })!;
  const without = batteryRuntimeHours({ ...pack, idleWatts: 0 })!;
  expect(withIdle).toBeCloseTo(1000 / 65, 9);
  expect(withIdle / without).toBeCloseTo(35 / 65, 9);
});

test('runtime and the kWh it takes are one equation read both ways', () => {
  const of = { loadWatts: 400, idleWatts: 25, dischargeEfficiency: 0.9 };
  const usableKwh = batteryKwhForHours({ ...of, hours: 12 });
  expect(batteryRuntimeHours({ ...of, usableKwh })).toBeCloseTo(12, 9);
});

test('a battery that nothing draws from has no end to give', () => {
  const idle = { usableKwh: 5, loadWatts: 0, idleWatts: 0, dischargeEfficiency: 0.9 };
  expect(batteryRuntimeHours(idle)).toBeNull();
});

test('a larger charger does not help behind a small source', () => {
  const time = chargingTime({ storedKwh: 9, sourceKw: 1.5, chargerInputKw: 6, efficiency: 0.9 });
  expect(time).toEqual({ hours: 10 / 1.5, limitedBy: 'source', sourceKwh: 10 });
});

test('shares outside 0 to 1 are refused', () => {
  expect(() => apparentPowerVa({ watts: 100, powerFactor: 0 })).toThrow(/powerFactor/);
  expect(() => apparentPowerVa({ watts: 100, powerFactor: 1.1 })).toThrow(RangeError);
});
