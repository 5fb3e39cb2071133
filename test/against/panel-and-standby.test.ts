import { describe, expect, test } from 'vitest';
import { busbarRoom } from '../../src/physics/busbar-room';
import { largestSetPointAmps, ratingForSetPointAmps } from '../../src/physics/energy-management';
import { neutralAmps } from '../../src/physics/neutral-current';
import { resistiveLoadAt } from '../../src/physics/resistive-load';
import { standbyCapacity } from '../../src/physics/standby-capacity';

describe('NEC 705.12, source and main at opposite ends of the busbar', () => {
  // The published case is a 200 A busbar with a 200 A main: 40 A. The others follow from the same rule.
  test.each([
    [100, 100, 20, 16],
    [125, 125, 25, 20],
    [125, 100, 50, 40],
    [150, 150, 30, 24],
    [200, 200, 40, 32],
    [200, 175, 65, 52],
    [200, 150, 90, 72],
    [225, 200, 70, 56],
    [400, 400, 80, 64],
  ])('%i A busbar, %i A main: %i A, %i A continuous', (busbarAmps, mainAmps, at125, continuous) => {
    const rooms = busbarRoom({
      busbarAmps,
      mainAmps,
      existingSourcesAt125Amps: 0,
      position: 'opposite-end',
      otherBreakersAmps: null,
    });
    const room = rooms.find((r) => r.route === 'opposite-end')!;
    expect(room.sourceAt125Amps).toBe(at125);
    expect(room.continuousAmps).toBe(continuous);
  });
});

describe('NEC 705.12, the other ways', () => {
  const panel = { busbarAmps: 200, mainAmps: 150, existingSourcesAt125Amps: 0 };

  test('anywhere on the busbar: 1.25 x source and main within the busbar', () => {
    const [any] = busbarRoom({ ...panel, position: null, otherBreakersAmps: null });
    expect(any).toMatchObject({ route: 'any-place', sourceAt125Amps: 50, continuousAmps: 40 });
  });

  test('one end of a center-fed dwelling panel has the 120 % as well (2017 on)', () => {
    const rooms = busbarRoom({ ...panel, position: 'center-fed-end', otherBreakersAmps: null });
    expect(rooms.find((r) => r.route === 'center-fed')!.sourceAt125Amps).toBe(90);
  });

  test('a place that is not known gets no 120 %', () => {
    const routes = busbarRoom({ ...panel, position: null, otherBreakersAmps: 120 }).map(
      (r) => r.route,
    );
    expect(routes).toEqual(['any-place', 'sum-of-breakers']);
  });

  test('solar that is there already takes its share', () => {
    const rooms = busbarRoom({
      busbarAmps: 200,
      mainAmps: 200,
      existingSourcesAt125Amps: 20,
      position: 'opposite-end',
      otherBreakersAmps: null,
    });
    expect(rooms.map((r) => r.sourceAt125Amps)).toEqual([0, 20]);
  });
});

// NEC 702.4 as in the 2008 proposal record; a calculated load of 34.8 kVA and a source of 11.4 kVA.
describe('NEC 702.4, size of an optional standby source', () => {
  const sourceVa = 11_400;

  test('by hand, the 9 kVA chosen to run at one time are enough', () => {
    const transfer = { kind: 'manual', chosenVa: 9000 } as const;
    expect(standbyCapacity({ sourceVa, transfer }).enough).toBe(true);
  });

  test('automatic without management, the whole 34.8 kVA are not', () => {
    const transfer = { kind: 'automatic', calculatedVa: 34_800 } as const;
    expect(standbyCapacity({ sourceVa, transfer }).enough).toBe(false);
  });

  test('automatic with management that stops at 11.0 kVA is', () => {
    const transfer = { kind: 'automatic-managed', managedVa: 11_000 } as const;
    expect(standbyCapacity({ sourceVa, transfer }).enough).toBe(true);
  });
});

describe('NEC 2023 220.70, a set point counts as continuous', () => {
  test.each([
    [80, 100],
    [160, 200],
  ])('a set point of %i A needs %i A of rating', (setPoint, rating) => {
    expect(ratingForSetPointAmps(setPoint)).toBe(rating);
    expect(largestSetPointAmps({ ratingAmps: rating, hundredPercentRated: false })).toBe(setPoint);
  });

  test('equipment listed for 100 % may be set to its rating', () => {
    expect(largestSetPointAmps({ ratingAmps: 100, hundredPercentRated: true })).toBe(100);
  });
});

// Circuit theory of a shared neutral (any textbook on three-phase circuits), loads at unity power factor.
describe('current in a shared neutral', () => {
  test.each([
    ['120/240', 20, 20, 0],
    ['120/240', 20, 12, 8],
    ['120-both-legs', 20, 12, 32],
    ['120/208', 20, 20, 20],
    ['120/208', 20, 0, 20],
  ] as const)('%s with %i A and %i A is %i A', (feed, legAAmps, legBAmps, amps) => {
    expect(neutralAmps({ legAAmps, legBAmps, feed })).toBeCloseTo(amps, 9);
  });

  test('at 120/208 V is the length of the sum of two phasors 120 degrees apart', () => {
    const [a, b] = [17, 9];
    const x = a + b * Math.cos((2 * Math.PI) / 3);
    const y = b * Math.sin((2 * Math.PI) / 3);
    const amps = neutralAmps({ legAAmps: a, legBAmps: b, feed: '120/208' });
    expect(amps).toBeCloseTo(Math.hypot(x, y), 9);
  });
});

test("a 4500 W element made for 240 V gives 3380 W at 208 V (power goes with the square of voltage; Ohm's law)", () => {
  const element = resistiveLoadAt({ ratedWatts: 4500, ratedVolts: 240, volts: 208 });
  expect(element.watts).toBeCloseTo(4500 * 0.7511, 0);
  expect(element.amps).toBeCloseTo(208 / (240 ** 2 / 4500), 9);
});
