import { describe, expect, test } from 'vitest';
import { loadCalculation } from '../../../src/plan/electrical/load-calculation';
import {
  sayEditionNote,
  sayLoadCalculation,
} from '../../../src/words/en/electrical/say-load-calculation';
import { houseWith } from './electrical-home';

const sumsOf = (home: ReturnType<typeof houseWith>, edition: number) =>
  loadCalculation(home).editions.find((one) => one.edition === edition)!.sums;

const saidOf = (home: ReturnType<typeof houseWith>) => sayLoadCalculation(loadCalculation(home));

describe('the dwelling load calculation of a home', () => {
  // 3 VA/ft2, 1500 VA a circuit, 8 kVA whole and 40 % of the rest: NEC 220.83(A).
  // 10 kVA whole and 40 % of the rest: NEC 220.82(B). Range, heater and dryer are the assumed nameplates.
  const general = 1500 * 3 + 2 * 1500 + 1500 + 12_000 + 4500 + 5000;

  test('follows 220.83 for the present service and 220.82 for new work', () => {
    const [existing, fresh] = sumsOf(houseWith(), 2023);
    expect(existing!.method).toBe('optional-existing');
    expect(existing!.totalVa).toBeCloseTo(8000 + 0.4 * (general - 8000), 6);
    expect(existing!.amps).toBeCloseTo((8000 + 0.4 * (general - 8000)) / 240, 6);
    expect(fresh!.totalVa).toBeCloseTo(10_000 + 0.4 * (general - 10_000), 6);
  });

  test('uses the standard method where the service is under 100 A or not known', () => {
    // NEC Table 220.42, 220.53 (one appliance: whole), 220.54, Table 220.55 column C; no motor.
    const lighting = 3000 + 0.35 * (1500 * 3 + 4500 - 3000);
    for (const main of [60, undefined]) {
      const [, second] = sumsOf(houseWith({ 'main-amps': main }), 2020);
      expect(second!.method).toBe('standard');
      expect(second!.totalVa).toBeCloseTo(lighting + 8000 + 5000 + 4500, 6);
    }
  });

  // NEC 220.50, 430.24: a quarter of the largest motor, the compressor of the air conditioner.
  test('adds a quarter of the air conditioner where the standard method is used', () => {
    const cooled = { 'cool-main': 'central', 'cool-tons': 3, 'main-amps': 60 };
    const [, warm] = sumsOf(houseWith({ 'main-amps': 60 }), 2017);
    const home = houseWith(cooled);
    const [, cool] = sumsOf(home, 2017);
    const va = home.loads.find((load) => load.id === 'central-ac')!.runningVa.value;
    expect(cool!.totalVa - warm!.totalVa).toBeCloseTo(1.25 * va, 6);
  });

  test('says the least service of a house where the main is smaller (230.79(C))', () => {
    expect(saidOf(houseWith({ 'main-amps': 60 }))).toContain('230.79(C)');
    expect(saidOf(houseWith({ 'main-amps': 200 }))).not.toContain('230.79(C)');
  });

  test('gives amps of a 120/208 V building from 208 V', () => {
    const house = houseWith({ 'home-kind': 'off-grid', 'supply-volts': 'v120-208' });
    const [existing] = sumsOf(house, 2017);
    expect(existing!.amps).toBeCloseTo(existing!.totalVa / 208, 6);
  });

  test('says that the 2026 numbers are missing and gives no sum for them', () => {
    const last = loadCalculation(houseWith()).editions.at(-1)!;
    expect(last).toMatchObject({ edition: 2026, sums: [] });
    expect(last.note.code).toBe('numbers-not-held');
    expect(sayEditionNote(last.note)).toContain('do not hold');
  });

  test('passes at 80 % of the main or less, and not above', () => {
    expect(loadCalculation(houseWith()).verdict).toBe('passes');
    const charger = { 'big-loads': ['electric-dryer', 'ev-charger'], 'ev-breaker': 60 };
    const tight = loadCalculation(houseWith({ ...charger, 'main-amps': 100 }));
    expect(tight.verdict).not.toBe('passes');
    expect(sayLoadCalculation(tight)).toContain('Electrician and inspector decide');
  });

  test('counts a car charger at 125 % in the careful sum', () => {
    const [existing] = sumsOf(
      houseWith({ 'big-loads': ['ev-charger'], 'ev-breaker': 50, 'water-heater': 'gas-pilot' }),
      2017,
    );
    // 40 A x 240 V of charging, a quarter more of it.
    expect(existing!.carefulAmps - existing!.amps).toBeCloseTo((0.25 * 40 * 240) / 240, 0);
  });

  test('judges nothing while the main breaker was not read, and passes nothing on an assumed answer', () => {
    const unread = loadCalculation(houseWith({ 'main-amps': 'not sure' }));
    expect(unread.verdict).toBe('not-judged');
    expect(sayLoadCalculation(unread)).toContain('not read');
    const assumed = loadCalculation(houseWith({ 'home-area': 'not sure' }));
    expect(assumed.verdict).toBe('marginal');
    expect(sayLoadCalculation(assumed)).toContain('floor area');
  });

  test('leaves an apartment to its building', () => {
    const flat = loadCalculation(houseWith({ 'home-kind': 'apartment' }));
    expect(flat).toMatchObject({ verdict: 'not-judged', editions: [] });
  });
});
