import { describe, expect, test } from 'vitest';
import { startFromCodeLetter, startFromHorsepower } from '../../src/physics/motor-start';
import { codeLetterRow, codeLetters } from '../../src/tables/electrical/code-letters';
import { lockedRotorCurrent } from '../../src/tables/electrical/locked-rotor-current';
import { fullLoadCurrent } from '../../src/tables/electrical/motor-current';

// NEC Table 430.248 (reprint of the 1999 table, then 430-148; unchanged since).
const FULL_LOAD_A: [hp: number, volts: 115 | 200 | 208 | 230, amps: number][] = [
  [0.25, 115, 5.8],
  [0.3333, 115, 7.2],
  [0.5, 115, 9.8],
  [0.5, 230, 4.9],
  [0.75, 208, 7.6],
  [1, 115, 16],
  [1, 230, 8],
  [1.5, 200, 11.5],
  [3, 230, 17],
  [5, 230, 28],
  [10, 115, 100],
];

// NEC 2008 Table 430.251(A).
const LOCKED_ROTOR_A: [hp: number, volts: 115 | 208 | 230, amps: number][] = [
  [0.5, 115, 58.8],
  [0.5, 230, 29.4],
  [0.75, 208, 45.8],
  [1, 115, 96],
  [1, 230, 48],
  [1.5, 230, 60],
  [2, 208, 80],
  [3, 230, 102],
  [5, 115, 336],
  [7.5, 208, 265],
  [10, 230, 300],
];

// NEC Table 430.7(B): kVA per hp with the rotor held still.
const LETTERS: [letter: string, low: number, high: number][] = [
  ['A', 0, 3.14],
  ['D', 4.0, 4.49],
  ['F', 5.0, 5.59],
  ['G', 5.6, 6.29],
  ['H', 6.3, 7.09],
  ['J', 7.1, 7.99],
  ['K', 8.0, 8.99],
  ['M', 10.0, 11.19],
  ['P', 12.5, 13.99],
  ['U', 20.0, 22.39],
];

describe('NEC Table 430.248', () => {
  test.each(FULL_LOAD_A)('gives %f hp at %i V a full-load current of %f A', (hp, volts, amps) => {
    const row = fullLoadCurrent.rows.find((r) => r.hp === hp)!;
    expect(row[`amps${volts}`]).toBe(amps);
  });
});

describe('NEC Table 430.251(A)', () => {
  test.each(LOCKED_ROTOR_A)('gives %f hp at %i V a locked-rotor current of %f A', (hp, v, amps) => {
    const row = lockedRotorCurrent.rows.find((r) => r.hp === hp)!;
    expect(row[`amps${v}`]).toBe(amps);
    // The table's figure is what a start from horsepower alone takes as likely.
    expect(startFromHorsepower({ tableAmps: amps, volts: v }).amps.likely).toBeCloseTo(amps, 9);
  });

  test('is six times Table 430.248 at 115 and 230 V, two tables the code prints apart', () => {
    for (const row of lockedRotorCurrent.rows) {
      const running = fullLoadCurrent.rows.find((r) => r.hp === row.hp)!;
      expect(row.amps115).toBeCloseTo(6 * running.amps115, 9);
      expect(row.amps230).toBeCloseTo(6 * running.amps230, 9);
    }
  });
});

describe('NEC Table 430.7(B)', () => {
  test.each(LETTERS)('gives code letter %s %f to %f kVA a horsepower', (letter, low, high) => {
    expect(codeLetterRow(letter)).toMatchObject({ kvaPerHpLow: low, kvaPerHpHigh: high });
  });

  test('runs without a gap from A to V and leaves out I, O and Q', () => {
    expect(codeLetters.rows.map((r) => r.letter).join('')).toBe('ABCDEFGHJKLMNPRSTUV');
    codeLetters.rows.slice(1).forEach((row, i) => {
      expect(row.kvaPerHpLow - codeLetters.rows[i]!.kvaPerHpHigh!).toBeCloseTo(0.01, 9);
    });
    expect(codeLetterRow('V')!.kvaPerHpHigh).toBeNull();
  });

  test('puts a 1 hp motor of code K at 230 V between 34.8 and 39.1 A', () => {
    const start = startFromCodeLetter({ hp: 1, ...codeLetterRow('K')!, volts: 230 })!;
    expect(start.amps.low).toBeCloseTo((1000 * 8.0) / 230, 9);
    expect(start.amps.high).toBeCloseTo((1000 * 8.99) / 230, 9);
  });

  test('puts a 1 hp motor of code G at 230 V at 27.35 A at most', () => {
    const start = startFromCodeLetter({ hp: 1, ...codeLetterRow('G')!, volts: 230 })!;
    expect(start.amps.high).toBeCloseTo(27.35, 2);
  });

  // The kVA per hp that Table 430.251(A) implies at 230 V must fall in the letter the code would give it.
  test.each([
    [0.5, 'P'],
    [0.75, 'P'],
    [1, 'M'],
    [1.5, 'L'],
    [2, 'K'],
    [3, 'J'],
    [5, 'J'],
    [10, 'H'],
  ])('agrees with Table 430.251(A): %f hp is letter %s', (hp, letter) => {
    const amps = lockedRotorCurrent.rows.find((r) => r.hp === hp)!.amps230;
    const kvaPerHp = (230 * amps) / 1000 / hp;
    const row = codeLetterRow(letter)!;
    expect(kvaPerHp).toBeGreaterThanOrEqual(row.kvaPerHpLow);
    expect(kvaPerHp).toBeLessThan(row.kvaPerHpHigh! + 0.01);
  });
});
