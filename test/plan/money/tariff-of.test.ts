import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { checkTariff } from '../../../src/bill/tariff/check-tariff';
import type { Answers } from '../../../src/interview/answers';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { billFit } from '../../../src/plan/money/bill-fit';
import { tariffOf } from '../../../src/plan/money/tariff-of';
import { sayBillFit } from '../../../src/words/en/money/say-bill-fit';
import { sayTariff } from '../../../src/words/en/money/say-tariff';
import { peakAndRest } from './peak-and-rest';

const homeOf = (answers: Answers) =>
  homeFromAnswers(
    interview,
    { 'home-zip': '43215', 'home-kind': 'house', ...answers },
    '2026-11-25',
  );

describe('the tariff of a home', () => {
  test('is what was read off the bill', () => {
    const { tariff, told } = tariffOf(homeOf(peakAndRest))!;
    expect(told).toBe(true);
    expect(tariff.fixed.perMonth).toBe(14);
    expect(tariff.seasons[0]!.periods).toMatchObject([
      { price: 0.36, hours: [[16, 21]] },
      { price: 0.15 },
    ]);
  });

  test('has its peak in the months told and in no other', () => {
    const { tariff } = tariffOf(homeOf({ ...peakAndRest, 'peak-season': 'summer' }))!;
    expect(checkTariff(tariff)).toEqual([]);
    expect(tariff.seasons.map((s) => s.periods.length)).toEqual([2, 1]);
  });

  test('never prices an hour twice, whatever windows are chosen', () => {
    const peaks = ['h16-21', 'h17-20', 'h15-19', 'h14-20', 'h12-18', 'h7-23'];
    for (const peak of peaks) {
      for (const low of ['h0-6', 'h23-7', 'h21-9', 'h9-14']) {
        const answers = {
          'price-steps': 'three',
          'price-middle': 22,
          'peak-hours': peak,
          'low-hours': low,
        };
        for (const season of ['all-year', 'summer', 'winter']) {
          const of = tariffOf(homeOf({ ...peakAndRest, ...answers, 'peak-season': season }))!;
          expect(of.told, `${peak} ${low} ${season}`).toBe(true);
          expect(checkTariff(of.tariff)).toEqual([]);
        }
      }
    }
  });

  test('is one price, and says so, where the prices by the hour are not known', () => {
    const home = homeOf({ 'bill-plan': 'time-of-use', 'bill-price': 20 });
    const of = tariffOf(home)!;
    expect(of.tariff.seasons[0]!.periods).toHaveLength(1);
    expect(sayTariff(home, of)).toContain('nothing is counted for using them');
  });

  test('has two prices by the month with tiers, and a demand price where one is told', () => {
    const tiers = tariffOf(
      homeOf({ 'bill-plan': 'tiers', 'tier-limit': 500, 'tier-first': 14, 'tier-price': 21 }),
    )!;
    expect(tiers.tariff.seasons[0]!.tiers).toEqual([
      { upToKwh: 500, price: 0.14 },
      { price: 0.21 },
    ]);
    const demand = tariffOf(
      homeOf({
        ...peakAndRest,
        'bill-plan': 'demand',
        'demand-price': 9.5,
        'demand-hours': 'h15-20',
      }),
    )!;
    expect(demand.tariff.demand![0]).toMatchObject({ hours: [[15, 20]], prices: [{ perKw: 9.5 }] });
  });

  test('is none off the grid', () => {
    expect(tariffOf(homeOf({ 'home-kind': 'off-grid' }))).toBeNull();
  });
});

describe('the bill held against the prices', () => {
  const bill = { 'bill-kwh': 300, 'bill-days': 30 };

  test('fits when all use lies between the lowest and the highest price: 300 x 0.15 + 14 to 300 x 0.36 + 14', () => {
    const home = homeOf({ ...peakAndRest, ...bill, 'bill-dollars': 75 });
    expect(billFit(home, tariffOf(home)!)!.fits).toBe(true);
  });

  test('says which line to look at when it is out by more than 10 %', () => {
    const home = homeOf({ ...peakAndRest, ...bill, 'bill-dollars': 260 });
    const fit = billFit(home, tariffOf(home)!)!;
    expect(fit.fits).toBe(false);
    expect(sayBillFit(fit)).toContain('Look for');
  });
});
