import { expect, test } from 'vitest';
import { figure } from '../../src/quantity/figure';
import { fuelHours, fuelUse } from '../../src/routes/generator-size';

const source = { kind: 'assumed' } as const;

test('a full tank that is well known, shared with a house that burns little: its share stays in order, and hours with it', () => {
  for (const besidePerDay of [0.1, 1, 4, 20]) {
    const fuel = fuelUse({
      generator: 'portable-inverter',
      fuel: 'propane',
      ratedKw: 5,
      siteKw: 4.5,
      wattsByHour: Array.from({ length: 24 }, () => 400),
      hungry: 1.6,
      atHand: figure({ value: 100, low: 99, high: 101, unit: 'gal', source }),
      besidePerDay: figure({
        ...{ value: besidePerDay, low: besidePerDay, high: besidePerDay },
        ...{ unit: 'gal/day', source },
      }),
    });
    const { atHand, perDay } = fuel;
    expect(atHand!.value).toBeLessThan(100);
    expect(atHand!.low).toBeLessThanOrEqual(atHand!.value);
    expect(atHand!.value).toBeLessThanOrEqual(atHand!.high);
    const hours = fuelHours(fuel)!;
    // Never longer than the tank holds out by hand: contents / all that burns from it.
    expect(hours.value).toBeCloseTo((24 * 100) / (perDay.value + besidePerDay), 6);
    expect(hours.low).toBeLessThanOrEqual((24 * 99) / (perDay.high + besidePerDay) + 1e-9);
  }
});
