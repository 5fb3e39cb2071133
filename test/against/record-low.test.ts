import { describe, expect, test } from 'vitest';
import { placeRecordLowC } from '../../src/home/weather/record-low';
import { coldFactor } from '../../src/physics/panel/row-in-cold';
import { recordLowC } from '../../src/physics/weather/record-low';
import { panelColdFactor, panelColdFactors } from '../../src/tables/electrical/panel-cold-factor';
import { allStations } from '../../src/tables/place/climate';
import { placeOf } from '../../src/tables/place/place';

const celsius = (f: number) => (f - 32) / 1.8;

// Lowest temperature of record, airports, through 1980: Statistical Abstract of the United States 1982-83, table 372
// (U.S. Bureau of the Census); Chicago O'Hare 1985, National Weather Service. Degrees Fahrenheit.
describe('the record low that a place is held to', () => {
  test.each([
    ['Phoenix', '85034', 17],
    ['Little Rock', '72202', -5],
    ['Los Angeles', '90045', 23],
    ['Sacramento', '95822', 20],
    ['San Francisco', '94128', 20],
    ['Denver', '80207', -30],
    ['Hartford', '06096', -26],
    ['Wilmington', '19720', -6],
    ['Washington', '22202', 1],
    ['Chicago', '60666', -27],
  ])('%s: never more than 3 K too warm, nor absurdly cold', (_, zip, recordF) => {
    const low = placeRecordLowC(placeOf({ zip }));
    expect(low).toBeLessThanOrEqual(celsius(recordF) + 3);
    expect(low).toBeGreaterThan(celsius(recordF) - 22);
  });

  test('is at every station well below what 99 of 100 hours exceed, and never below the lowest of the country', () => {
    for (const { climate, name } of allStations()) {
      const low = recordLowC(climate);
      expect(low, name).toBeLessThan(climate.heat99C - 3);
      expect(low, name).toBeGreaterThanOrEqual(-62.2);
    }
  });
});

// The rows are from memory, so they are held to the arithmetic of silicon: 0.28 to 0.46 % a kelvin from 25 C.
describe('NEC Table 690.7(A)', () => {
  test.each(panelColdFactors.rows.filter((row) => row.fromC < 15))(
    'from $fromC C: $factor lies between the ends of usual coefficients',
    ({ fromC, factor }) => {
      expect(factor).toBeGreaterThan(coldFactor({ lowestC: fromC + 4, percentPerK: -0.28 }));
      expect(factor).toBeLessThan(coldFactor({ lowestC: fromC, percentPerK: -0.46 }));
    },
  );

  test('never falls where it gets colder, and goes on below its last row', () => {
    const at = Array.from({ length: 90 }, (_, i) => panelColdFactor(27 - i));
    for (const [i, factor] of at.entries())
      if (i > 0) expect(factor).toBeGreaterThanOrEqual(at[i - 1]!);
    expect(panelColdFactor(-60)).toBeGreaterThan(1.25);
    expect(panelColdFactor(26)).toBe(1);
  });
});
