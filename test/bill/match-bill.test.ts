import { describe, expect, test } from 'vitest';
import { assumedTariff } from '../../src/bill/tariff/assumed-tariff';
import { checkTariff } from '../../src/bill/tariff/check-tariff';
import { demoTariff } from '../../src/bill/tariff/demo-tariffs';
import { matchBill } from '../../src/bill/tariff/match-bill';
import { tariffFromBill } from '../../src/bill/tariff/tariff-from-bill';
import { sayCite } from '../../src/words/en/cites/say-cite';
import { sayOrigin } from '../../src/words/en/explain/say-origin';
import { sayBillFit } from '../../src/words/en/money/say-bill-fit';

describe('a bill held against the prices given', () => {
  const flat = demoTariff('A');
  const right = 12 * (30 / 30.4) + 900 * 0.165;

  test('fits within 10 % and not beyond', () => {
    expect(matchBill(flat, { kwh: 900, days: 30, dollars: right }).fits).toBe(true);
    expect(matchBill(flat, { kwh: 900, days: 30, dollars: 1.09 * right }).fits).toBe(true);
    expect(matchBill(flat, { kwh: 900, days: 30, dollars: 1.11 * right }).fits).toBe(false);
    expect(matchBill(flat, { kwh: 900, days: 30, dollars: 0.89 * right }).fits).toBe(false);
  });

  test('a bill that is too high sends the reader to a second price', () => {
    const found = matchBill(flat, { kwh: 900, days: 30, dollars: right + 90 });
    expect(sayBillFit(found)).toContain('about 10.0 cents a kWh');
  });

  test('a fixed charge larger than the bill is named', () => {
    const tariff = { ...flat, fixed: { perMonth: 200 } };
    const found = matchBill(tariff, { kwh: 900, days: 30, dollars: 100 });
    expect(found).toMatchObject({ lookAt: { code: 'fixed-charge' } });
    expect(sayBillFit(found)).toContain('fixed');
  });

  test('no kWh at all sends the reader to the meter readings, not to a division by zero', () => {
    const found = matchBill(flat, { kwh: 0, days: 30, dollars: 100 });
    expect(found.fits).toBe(false);
    expect(sayBillFit(found)).toContain('meter readings');
    expect(sayBillFit(found)).not.toMatch(/NaN|Infinity/);
  });

  test('by the clock any price between the lowest and the highest fits', () => {
    const tariff = demoTariff('B');
    expect(matchBill(tariff, { kwh: 1000, days: 30.4, dollars: 14 + 200 }).fits).toBe(true);
    expect(matchBill(tariff, { kwh: 1000, days: 30.4, dollars: 14 + 120 }).fits).toBe(false);
    expect(matchBill(tariff, { kwh: 1000, days: 30.4, dollars: 14 + 410 }).fits).toBe(false);
  });
});

describe('a tariff from what is printed', () => {
  test('two periods and not sure about export: a quarter of the cheapest price', () => {
    const tariff = tariffFromBill({
      fixedPerMonth: 14,
      energy: {
        kind: 'by-clock',
        periods: [{ is: 'peak', price: 0.36, days: 'every', hours: [[16, 21]] }],
        otherPrice: 0.16,
      },
      demand: null,
      export: { kind: 'not-sure', price: null },
    });
    expect(checkTariff(tariff)).toEqual([]);
    expect(tariff.export).toMatchObject({
      rule: 'net-billing',
      seasons: [{ periods: [{ price: 0.04 }] }],
    });
  });

  test('tiers and net metering', () => {
    const tariff = tariffFromBill({
      fixedPerMonth: null,
      energy: { kind: 'tiers', tiers: [{ upToKwh: 500, price: 0.1 }, { price: 0.2 }] },
      demand: { perKw: 8, hours: [[15, 20]], windowMinutes: 60 },
      export: { kind: 'net-metering', price: null },
    });
    expect(checkTariff(tariff)).toEqual([]);
    expect(tariff.export).toMatchObject({ rule: 'net-metering', netting: 'total' });
    expect(tariff.demand).toHaveLength(1);
  });
});

describe('not sure: the average price of the state', () => {
  test('carries the year and the source', () => {
    const { price, tariff } = assumedTariff('CT');
    expect(price.value).toBeCloseTo(0.2875, 9);
    expect(sayOrigin(price.source)).toContain('2024 average of Connecticut');
    expect(sayOrigin(price.source)).toContain('in April 2025 it was 32.3 cents');
    expect(sayOrigin(assumedTariff('TX').price.source)).toContain('2023 average of Texas');
    expect(sayOrigin(assumedTariff('TX').price.source)).toContain(
      'no later price of it is in our table',
    );
    expect(sayCite(price.source.cite!)).toContain('Electric Power Annual');
    expect(checkTariff(tariff)).toEqual([]);
  });
  test('an unknown state takes the country', () => {
    expect(assumedTariff(null).price.value).toBeCloseTo(0.1648, 9);
  });
});
