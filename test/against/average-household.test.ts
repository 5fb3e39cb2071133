import { describe, expect, test } from 'vitest';
import { dailyKwh, type HouseholdLoadId, householdLoad } from '../../src/tables/household-loads';

// Our likely figures for single loads, multiplied by how many an average US dwelling has, against what EIA says an average
// residential customer uses. Every input is published; nothing is fitted.

/** EIA, "How is electricity used in U.S. homes?" (2022 data): TWh of the residential sector, all uses 1,542 TWh. */
const EIA_TWH = {
  'water heating': 176,
  refrigerators: 87,
  'clothes dryers': 65,
  televisions: 54,
  freezers: 20,
  'clothes washers': 11,
  dishwashers: 8,
};
const ALL_TWH = 1542;
/** EIA: an average residential customer used 10,791 kWh in 2022. */
const CUSTOMER_KWH = 10_791;

/**
 * Shares of US dwellings with each thing: National Renewable Energy Laboratory, national housing stock characteristics
 * (from EIA's 2020 survey of homes and the Census), and the share that is lived in.
 */
const LIVED_IN = 1 - 0.121517;
const SHARE = {
  electricTank: 0.0997112 + 0.36526,
  fridge: 1 - 0.0130709,
  secondFridge: 1 - 0.741254,
  freezer: 0.328404,
  electricDryer: 0.668259,
  washer: 0.83799,
  dishwasher: 1 - 0.276931,
};
/** EIA survey of 2015: 2.3 televisions a household. */
const TELEVISIONS = 2.3;

/** kWh a year of one load by our table, the three seasons weighing the same. */
const yearKwh = (id: HouseholdLoadId) => {
  const row = householdLoad(id);
  const days = (['winter', 'mild', 'summer'] as const).map((season) => dailyKwh(row, season)[1]);
  return (365 * days.reduce((sum, kwh) => sum + kwh, 0)) / 3;
};

const OURS = {
  'water heating': SHARE.electricTank * yearKwh('electric-water-heater'),
  refrigerators: (SHARE.fridge + SHARE.secondFridge) * yearKwh('fridge'),
  'clothes dryers': SHARE.electricDryer * yearKwh('electric-dryer'),
  televisions: TELEVISIONS * yearKwh('television'),
  // The survey does not say which kind, so half of each.
  freezers: (SHARE.freezer * (yearKwh('freezer-chest') + yearKwh('freezer-upright'))) / 2,
  'clothes washers': SHARE.washer * yearKwh('washer'),
  dishwashers: SHARE.dishwasher * yearKwh('dishwasher'),
};

const uses = Object.keys(EIA_TWH) as (keyof typeof EIA_TWH)[];
const eiaKwh = (use: keyof typeof EIA_TWH) => (CUSTOMER_KWH * EIA_TWH[use]) / ALL_TWH;
const ourKwh = (use: keyof typeof EIA_TWH) => LIVED_IN * OURS[use];

describe('the average household of EIA, built from our loads and published counts', () => {
  test.each(uses)('%s come out within 30 %%', (use) => {
    expect(ourKwh(use) / eiaKwh(use)).toBeGreaterThan(0.7);
    expect(ourKwh(use) / eiaKwh(use)).toBeLessThan(1.3);
  });

  test('these uses together come out within 15 %', () => {
    const sum = (kwh: (use: keyof typeof EIA_TWH) => number) =>
      uses.reduce((total, use) => total + kwh(use), 0);
    expect(sum(ourKwh) / sum(eiaKwh)).toBeGreaterThan(0.85);
    expect(sum(ourKwh) / sum(eiaKwh)).toBeLessThan(1.15);
  });
});

test('10,791 kWh a year is 29.6 kWh a day and 1.232 kW all the time (EIA average customer, 2022)', () => {
  expect(CUSTOMER_KWH / 365).toBeCloseTo(29.6, 1);
  expect(CUSTOMER_KWH / 8760).toBeCloseTo(1.232, 3);
});
