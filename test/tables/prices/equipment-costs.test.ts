import { expect, test } from 'vitest';
import {
  equipmentCost,
  equipmentCosts,
  priceAgeYears,
} from '../../../src/tables/prices/equipment-costs';
import { sayCite } from '../../../src/words/en/cites/say-cite';

test('every cost row is a range in order, with a year, a source and a life', () => {
  expect(equipmentCosts.rows.length).toBeGreaterThan(20);
  for (const row of equipmentCosts.rows) {
    expect(row.low, row.class).toBeGreaterThan(0);
    expect(row.low <= row.likely && row.likely <= row.high, row.class).toBe(true);
    expect(row.upkeepLow <= row.upkeepLikely && row.upkeepLikely <= row.upkeepHigh).toBe(true);
    expect(row.lifeLow <= row.lifeLikely && row.lifeLikely <= row.lifeHigh).toBe(true);
    expect(row.leadWeeksLow <= row.leadWeeksHigh, row.class).toBe(true);
    expect(row.year).toBeGreaterThan(2019);
    expect(sayCite(row.source).length).toBeGreaterThan(10);
  }
});

test('no class stands twice', () => {
  const classes = equipmentCosts.rows.map((r) => r.class);
  expect(new Set(classes).size).toBe(classes.length);
});

test('the 12.5 kWh benchmark system of NREL Q1 2022, 1,503 $/kWh, lies inside the battery range', () => {
  const battery = equipmentCost('battery');
  expect(battery.low).toBeLessThan(18787.5 / 12.5);
  expect(battery.high).toBeGreaterThan(18787.5 / 12.5);
});

test('the age of a price is counted from the day asked for, not from a clock', () => {
  expect(priceAgeYears({ year: 2021 }, '2026-11-25')).toBe(5);
});
