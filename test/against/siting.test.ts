import { describe, expect, test } from 'vitest';
import { generatorSiting } from '../../src/physics/siting/generator-siting';
import { storageFindings } from '../../src/physics/siting/storage-siting';
import type { StorageUnit } from '../../src/physics/siting/storage-unit';
import { namedValue } from '../../src/tables/named-values';
import { sitingDistances } from '../../src/tables/siting-distances';
import { storageLimits } from '../../src/tables/storage-limits';

const distance = (id: string) => namedValue(sitingDistances, id).value;

describe('published distances and limits', () => {
  test.each([
    ['portable-engine-to-home', 20, 'CPSC generator safety releases'],
    [
      'standby-engine-to-home',
      25,
      'CPSC report of June 2025 on stationary generators, press summary',
    ],
    ['storage-unit-kwh', 20, 'IRC 2021 R328.5, NFPA 855 chapter 15'],
    ['storage-utility-space-kwh', 40, 'IRC 2021 R328.5'],
    ['storage-garage-kwh', 80, 'NFPA 855 chapter 15'],
    ['storage-exterior-wall-kwh', 80, 'NFPA 855 chapter 15'],
    ['storage-ground-kwh', 80, 'NFPA 855 chapter 15'],
    ['storage-between-units', 36, 'NFPA 855 15.5'],
    ['storage-to-opening', 36, 'IRC 2021 R328.3'],
    ['storage-above-vehicle', 48, 'SolSmart permitting guideline'],
    ['flooded-battery', 50, 'NHTSA'],
  ])('%s is %i (%s)', (id, value) => {
    expect(distance(id)).toBe(value);
  });
});

const wall: StorageUnit = {
  kwh: 15,
  place: 'exterior-wall',
  gapIn: Number.POSITIVE_INFINITY,
  testedGapIn: null,
  openingIn: 60,
  openingIntoDwelling: true,
  aboveVehicleIn: Number.POSITIVE_INFINITY,
  listedForLiving: false,
};
const spaced = (n: number, unit: StorageUnit) =>
  Array.from({ length: n }, () => ({ ...unit, gapIn: 36 }));
const found = (units: readonly StorageUnit[]) =>
  storageFindings(units, storageLimits).map((f) => `${f.id}: ${f.verdict}`);

// IRC 2021 R328 and NFPA 855 chapter 15, applied to cases of our own arithmetic.
describe('siting of batteries', () => {
  test('four units of 18 kWh in an attached garage, 72 kWh, pass', () => {
    expect(found(spaced(4, { ...wall, place: 'garage', kwh: 18 }))).toEqual([]);
  });

  test('a fifth makes 90 kWh and is too much', () => {
    const units = spaced(5, { ...wall, place: 'garage', kwh: 18 });
    expect(found(units)).toEqual(['place-over-limit: fails']);
  });

  test('three units of 15 kWh in a utility room are too much, two are not', () => {
    const room: StorageUnit = { ...wall, place: 'utility-space' };
    expect(found(spaced(3, room))).toEqual(['place-over-limit: fails']);
    expect(found(spaced(2, room))).toEqual([]);
  });

  test('one unit of 25 kWh on an outside wall is too large by itself', () => {
    expect(found([{ ...wall, kwh: 25 }])).toEqual(['unit-too-large: fails']);
  });

  test('40 kWh indoors and 60 kWh in the garage pass each place, and the total is asked about', () => {
    const indoors = spaced(2, { ...wall, place: 'utility-space', kwh: 20 });
    const garage = spaced(3, { ...wall, place: 'garage', kwh: 20 });
    expect(found([...indoors, ...garage])).toEqual(['total-check-local: ask']);
  });

  test('two units 24 in apart need a fire test that shows 24 in to be enough', () => {
    expect(found([{ ...wall, gapIn: 24 }])).toEqual(['units-too-close: fails']);
    expect(found([{ ...wall, gapIn: 24, testedGapIn: 24 }])).toEqual([]);
  });

  test('30 in from a window into the dwelling fails; into a garage it is asked about', () => {
    expect(found([{ ...wall, openingIn: 30 }])).toEqual(['too-near-opening: fails']);
    const garageWindow = { ...wall, openingIn: 30, openingIntoDwelling: false };
    expect(found([garageWindow])).toEqual(['too-near-opening: ask']);
  });

  test('a bedroom closet is never allowed, a living room only for a unit listed for it', () => {
    expect(found([{ ...wall, place: 'sleeping', listedForLiving: true }])).toEqual([
      'place-not-allowed: fails',
    ]);
    expect(found([{ ...wall, place: 'living' }])).toEqual(['place-not-allowed: fails']);
    expect(found([{ ...wall, place: 'living', listedForLiving: true }])).toEqual([]);
  });

  test('a unit 20 in above the floor on the end wall of a garage needs a barrier', () => {
    const end: StorageUnit = { ...wall, place: 'garage', aboveVehicleIn: 20 };
    expect(found([end])).toEqual(['needs-vehicle-protection: protect']);
    expect(found([{ ...end, aboveVehicleIn: 48 }])).toEqual([]);
  });

  test('what is not known is asked about, never passed', () => {
    const unknown = { ...wall, gapIn: null, openingIn: null, aboveVehicleIn: null };
    expect(found([unknown])).toEqual([
      'units-too-close: ask',
      'too-near-opening: ask',
      'needs-vehicle-protection: ask',
    ]);
  });
});

// CPSC: outdoors only, 20 ft at least; never in a house, garage, basement, crawl space, shed or porch, doors open or not.
describe('siting of engines', () => {
  const outdoors = { spot: 'outdoors', leastFt: 20, kind: 'portable' } as const;

  test.each([
    ['inside', 'no'],
    ['under-roof', 'no'],
    [null, 'ask'],
  ] as const)('%s: %s', (spot, verdict) => {
    const siting = generatorSiting({ ...outdoors, spot, nearestOpeningFt: 40 });
    expect(siting.verdict).toBe(verdict);
  });

  test('20 ft outdoors is far enough, 19 ft is not, and an unknown distance is asked about', () => {
    expect(generatorSiting({ ...outdoors, nearestOpeningFt: 20 }).verdict).toBe('far-enough');
    expect(generatorSiting({ ...outdoors, nearestOpeningFt: 19 }).verdict).toBe('no');
    expect(generatorSiting({ ...outdoors, nearestOpeningFt: null }).verdict).toBe('ask');
  });

  test('a fixed engine 5 ft from the wall meets the fire rule only, so its exhaust path is asked about', () => {
    const fixed = {
      ...outdoors,
      kind: 'standby',
      leastFt: distance('standby-engine-to-home'),
    } as const;
    expect(generatorSiting({ ...fixed, nearestOpeningFt: 5 }).verdict).toBe('ask');
    expect(generatorSiting({ ...fixed, nearestOpeningFt: 25 }).verdict).toBe('far-enough');
  });
});
