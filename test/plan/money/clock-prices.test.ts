import { describe, expect, test } from 'vitest';
import { yearDays } from '../../../src/bill/tariff/bill-days';
import { checkTariff } from '../../../src/bill/tariff/check-tariff';
import { readTariff } from '../../../src/bill/tariff/read-tariff';
import { tariffFromBill } from '../../../src/bill/tariff/tariff-from-bill';
import { tariffHours } from '../../../src/bill/tariff/tariff-hours';
import { billReadingOf } from '../../../src/plan/money/bill-reading-of';
import { tariffInWords } from '../../../src/words/en/tariff/tariff-in-words';
import { houseWith } from '../electrical/electrical-home';

const peaks = ['h16-21', 'h17-20', 'h15-19', 'h14-20', 'h12-18', 'h7-23', 'h16-19'];
const lows = ['h0-6', 'h23-7', 'h21-9', 'h9-14'];
const days = ['weekdays', 'every', 'workdays'];
const all = peaks.flatMap((peak) =>
  lows.flatMap((low) => days.map((day) => [peak, low, day] as const)),
);

const tariffOf = (peak: string, low: string, day: string) =>
  tariffFromBill(
    billReadingOf(
      houseWith({
        'bill-plan': 'time-of-use',
        'price-steps': 'three',
        'price-peak': 40,
        'price-middle': 20,
        'price-low': 10,
        'peak-hours': peak,
        'low-hours': low,
        'peak-days': day,
      }),
    )!,
  );

/** Prices of a weekday and of a Sunday, hour by hour. */
function pricesOf(peak: string, low: string, day: string) {
  const year = yearDays(2026);
  const { importPrice } = tariffHours(tariffOf(peak, low, day), year);
  const at = (weekday: number) => {
    const d = year.findIndex((one) => one.month === 6 && one.weekday === weekday);
    return [...importPrice.slice(24 * d, 24 * d + 24)];
  };
  return { weekday: at(3), sunday: at(0) };
}

describe('three prices by the clock as told', () => {
  test.each(all)(
    'peak %s, cheapest %s, %s: a sound tariff in which the lowest price counts',
    (...told) => {
      const tariff = tariffOf(...told);
      expect(checkTariff(tariff)).toEqual([]);
      expect(readTariff(JSON.parse(JSON.stringify(tariffInWords(tariff)))).faults).toEqual([]);
      expect(pricesOf(...told).weekday).toContain(0.1);
    },
  );

  test('a night that runs into a peak of weekdays keeps its hours on a Sunday', () => {
    const { weekday, sunday } = pricesOf('h7-23', 'h21-9', 'weekdays');
    expect(weekday[8]).toBe(0.4);
    expect(sunday[8]).toBe(0.1);
    expect(sunday[12]).toBe(0.2);
  });
});
