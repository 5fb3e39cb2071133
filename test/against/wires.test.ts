import { describe, expect, test } from 'vitest';
import { smallestWire } from '../../src/physics/wire-size';
import { voltageDropByK, voltageDropByResistance } from '../../src/physics/wire-voltage-drop';
import { breakerAtLeast, breakerAtMost } from '../../src/tables/electrical/breaker-sizes';
import {
  serviceConductorFor,
  serviceConductors,
} from '../../src/tables/electrical/service-conductors';
import { wireAmpacity, wireChoices } from '../../src/tables/electrical/wire-ampacity';
import { wireReactance } from '../../src/tables/electrical/wire-reactance';
import { wireResistance } from '../../src/tables/electrical/wire-resistance';

const resistance = (size: string) => wireResistance.rows.find((r) => r.size === size)!;
const ampacity = (size: string) => wireAmpacity.rows.find((r) => r.size === size)!;

// NEC 2011 Chapter 9 Table 8, uncoated stranded copper and aluminum, ohm per 1000 ft at 75 C.
describe('NEC Chapter 9 Table 8', () => {
  test.each([
    ['14', 4110, 3.14, null],
    ['12', 6530, 1.98, 3.25],
    ['10', 10_380, 1.24, 2.04],
    ['8', 16_510, 0.778, 1.28],
    ['6', 26_240, 0.491, 0.808],
    ['4', 41_740, 0.308, 0.508],
    ['3', 52_620, 0.245, 0.403],
    ['2', 66_360, 0.194, 0.319],
    ['1', 83_690, 0.154, 0.253],
    ['1/0', 105_600, 0.122, 0.201],
    ['2/0', 133_100, 0.0967, 0.159],
    ['4/0', 211_600, 0.0608, 0.1],
  ])('%s AWG is %i cmil, copper %f, aluminum %s', (size, circularMils, copper, aluminum) => {
    expect(resistance(size)).toMatchObject({ circularMils, copperStranded: copper, aluminum });
  });

  test('gives K near 12.9 for stranded copper and 21.2 for aluminum, the handbook constants', () => {
    for (const row of wireResistance.rows) {
      // Printed to three figures, so within 1 %.
      expect((row.copperStranded * row.circularMils) / 1000 / 12.9).toBeCloseTo(1, 2);
      if (row.aluminum === null) continue;
      expect((row.aluminum * row.circularMils) / 1000 / 21.2).toBeCloseTo(1, 2);
    }
  });
});

describe('voltage drop, worked lesson for the electrician license', () => {
  const run = { k: 12.9, amps: 20, oneWayFt: 100, supplyVolts: 120 };

  test('20 A over 100 ft of 10 AWG copper at 120 V loses 4.97 V, 4.1 %', () => {
    const drop = voltageDropByK({ ...run, circularMils: 10_380 });
    expect(drop.volts).toBeCloseTo(4.97, 2);
    expect(drop.percent).toBeCloseTo(4.14, 2);
  });

  test('8 AWG brings it to 3.1 V, 2.6 %', () => {
    const drop = voltageDropByK({ ...run, circularMils: 16_510 });
    expect(drop.volts).toBeCloseTo(3.1, 1);
    expect(drop.percent).toBeCloseTo(2.6, 1);
  });

  test('so the thinnest wire within 3 % is 8 AWG, by Table 8 as well', () => {
    const wire = smallestWire({
      options: wireChoices('copper', 75),
      breakerAmps: 20,
      loadAmps: 20,
      continuous: false,
      oneWayFt: 100,
      supplyVolts: 120,
      maxDropPercent: 3,
    })!;
    expect(wire.size).toBe('8');
    expect(wire.limitedBy).toBe('voltage-drop');
  });

  test('24 A over 150 ft of 10 AWG at 240 V loses 8.93 V, 3.72 % with Table 8', () => {
    const { copperStranded: ohmPer1000Ft } = resistance('10');
    const drop = voltageDropByResistance({
      amps: 24,
      oneWayFt: 150,
      ohmPer1000Ft,
      supplyVolts: 240,
    });
    expect(drop.volts).toBeCloseTo(8.93, 2);
    expect(drop.percent).toBeCloseTo(3.72, 2);
  });
});

// NEC Chapter 9 Table 9: effective impedance at 0.85 power factor, printed to two or three digits.
describe('NEC Chapter 9 Table 9', () => {
  test.each([
    ['1/0', 'pvc', 0.12, 0.13],
    ['4/0', 'pvc', 0.062, 0.074],
    ['250', 'steel', 0.054, 0.073],
  ] as const)('%s copper in %s: R cos + X sin is the Z printed', (size, conduit, acOhm, z) => {
    const { [conduit]: reactance } = wireReactance.rows.find((r) => r.size === size)!;
    const at085 = 0.85 * acOhm + Math.sin(Math.acos(0.85)) * reactance;
    expect(Math.abs(at085 - z)).toBeLessThanOrEqual(0.006);
    // What the drop is worked out with is never less.
    expect(Math.hypot(acOhm, reactance)).toBeGreaterThanOrEqual(at085);
  });
});

// NEC 2023 Table 310.16, 60 C columns: NM cable and terminals that are not marked 75 C.
describe('NEC Table 310.16 at 60 C', () => {
  test.each([
    ['14', 15, null],
    ['12', 20, 15],
    ['10', 30, 25],
    ['8', 40, 35],
    ['6', 55, 40],
    ['4', 70, 55],
    ['3', 85, 65],
    ['2', 95, 75],
    ['1', 110, 85],
    ['1/0', 125, 100],
  ])('%s AWG carries %i A in copper, %s A in aluminum', (size, copper60, aluminum60) => {
    expect(ampacity(size)).toMatchObject({ copper60, aluminum60 });
  });
});

// NEC Table 310.16, 75 C columns.
describe('NEC Table 310.16', () => {
  test.each([
    ['12', 25, 20],
    ['10', 35, 30],
    ['8', 50, 40],
    ['6', 65, 50],
    ['4', 85, 65],
    ['3', 100, 75],
    ['2', 115, 90],
    ['1', 130, 100],
    ['1/0', 150, 120],
    ['2/0', 175, 135],
    ['3/0', 200, 155],
    ['4/0', 230, 180],
  ])('%s AWG carries %i A in copper, %i A in aluminum', (size, copper75, aluminum75) => {
    expect(ampacity(size)).toMatchObject({ copper75, aluminum75 });
  });

  test.each([
    ['14', 15],
    ['12', 20],
    ['10', 30],
  ])('240.4(D) holds %s AWG copper to a %i A breaker', (size, amps) => {
    expect(ampacity(size).breakerCopper).toBe(amps);
  });
});

// NEC 2020 Table 310.12(A).
describe('NEC Table 310.12(A)', () => {
  test.each([
    [100, '4', '2'],
    [110, '3', '1'],
    [125, '2', '1/0'],
    [150, '1', '2/0'],
    [200, '2/0', '4/0'],
    [225, '3/0', '250'],
    [300, '250', '350'],
    [400, '400', '600'],
  ])('%i A takes %s copper or %s aluminum', (ratingAmps, copper, aluminum) => {
    const row = serviceConductors.rows.find((r) => r.ratingAmps === ratingAmps)!;
    expect(row).toMatchObject({ copper, aluminum });
  });

  test('every row is the thinnest wire that carries 83 % of the rating at 75 C (310.12, the 83 % rule)', () => {
    for (const row of serviceConductors.rows) {
      for (const metal of ['copper', 'aluminum'] as const) {
        const thinnest = wireChoices(metal, 75).find(
          (w) => w.ampacityAmps >= 0.83 * row.ratingAmps,
        )!;
        expect(thinnest.size, `${row.ratingAmps} A ${metal}`).toBe(row[metal]);
      }
    }
  });
});

test('a rating between two rows takes the next row up, and above 400 A there is none', () => {
  expect(serviceConductorFor(190)!.ratingAmps).toBe(200);
  expect(serviceConductorFor(401)).toBeNull();
});

test('a 50 A inlet in NM cable needs 6 AWG copper, not the 8 AWG of the 75 C column (334.80, 110.14(C))', () => {
  const run = { breakerAmps: 50, loadAmps: 40, continuous: false, oneWayFt: 20, supplyVolts: 240 };
  const nm = smallestWire({ ...run, options: wireChoices('copper', 60), maxDropPercent: 3 })!;
  const marked = smallestWire({ ...run, options: wireChoices('copper', 75), maxDropPercent: 3 })!;
  expect([nm.size, marked.size]).toEqual(['6', '8']);
});

test.each([
  [41, 45],
  [44, 45],
  [51, 60],
  [101, 110],
  [201, 225],
])('the next standard breaker for %i A is %i A (NEC 240.6(A))', (amps, breaker) => {
  expect(breakerAtLeast(amps)).toBe(breaker);
});

test('above 400 A this table has nothing to give', () => {
  expect(breakerAtLeast(401)).toBeNull();
  expect(breakerAtMost(14)).toBeNull();
  expect(breakerAtMost(65)).toBe(60);
});
