import { describe, expect, test } from 'vitest';
import {
  dailyHours,
  dailyKwh,
  type HouseholdLoadRow,
  householdLoad,
  householdLoads,
} from '../../src/tables/household-loads';
import { loadShape, loadShapes } from '../../src/tables/load-shapes';
import { sayCite } from '../../src/words/en/cites/say-cite';

const SEASONS = ['winter', 'mild', 'summer'] as const;
const inOrder = (triple: readonly number[]) => triple[0]! <= triple[1]! && triple[1]! <= triple[2]!;

describe('every household load', () => {
  test.each(householdLoads.rows.map((row): [string, HouseholdLoadRow] => [row.id, row]))(
    '%s is whole and in order',
    (_id, row) => {
      expect(inOrder(row.runningWatts)).toBe(true);
      expect(inOrder(row.startingVa)).toBe(true);
      expect((row.hours === undefined) !== (row.kwh === undefined)).toBe(true);
      expect([1, 3]).toContain((row.hours ?? row.kwh)!.length);
      for (const season of SEASONS) {
        expect(inOrder(dailyKwh(row, season))).toBe(true);
        expect(dailyHours(row, season)[2]).toBeLessThanOrEqual(24);
      }
      // A start is never less than the VA while running.
      row.runningWatts.forEach((watts, i) => {
        expect(row.startingVa[i]).toBeGreaterThanOrEqual(watts / row.powerFactor - 1);
      });
      expect(row.powerFactor).toBeGreaterThan(0.4);
      expect(row.powerFactor).toBeLessThanOrEqual(1);
      expect(loadShape(row.shape)).toHaveLength(24);
      expect(sayCite(row.source).length).toBeGreaterThan(5);
    },
  );

  test('has its own id', () => {
    const ids = householdLoads.rows.map((row) => row.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(new Set(loadShapes.rows.map((row) => row.id)).size).toBe(loadShapes.rows.length);
  });

  test('that keeps someone alive or well asks for the supplier, and no other does', () => {
    const asks = householdLoads.rows.filter((row) => row.confirmWithSupplier).map((row) => row.id);
    expect(asks.sort()).toEqual(
      [
        'cpap-dry',
        'cpap-heated',
        'dialysis',
        'feeding-pump',
        'health-device',
        'infusion-pump',
        'medical-bed',
        'medicine-fridge',
        'nebuliser',
        'oxygen-concentrator',
        'power-wheelchair',
        'suction',
        'ventilator',
      ].sort(),
    );
  });
});

test('an unknown id is our own bug and throws', () => {
  expect(() => householdLoad('perpetual-motion' as never)).toThrow(RangeError);
  expect(() => loadShape('perpetual-motion')).toThrow(RangeError);
});

test('a furnace that runs 12 h at 600 W in winter uses 7.2 kWh', () => {
  expect(dailyKwh(householdLoad('furnace-gas'), 'winter')[1]).toBeCloseTo(7.2, 9);
});
