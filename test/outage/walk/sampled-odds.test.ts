import { describe, expect, it } from 'vitest';
import { hoursSurvived } from '../../../src/outage/hours-survived';
import { netEnergy } from '../../../src/outage/net-energy';
import { oddsFromFull } from '../../../src/outage/ride-through-odds';
import { MonthTally } from '../../../src/outage/walk/month-tally';
import { sampleOutages } from '../../../src/outage/walk/sampled-odds';
import { batteryOnly, generator, limits, madeUpRecord, vehicle } from './made-up-system';

const twoYears = madeUpRecord(730, 77, 5, 0.5);

describe('odds from walks that start every 37 hours', () => {
  it('come within two standard errors of walking every start hour of two years', () => {
    const system = {
      ...batteryOnly(8),
      generator,
      vehicle: { ...vehicle, storeKwh: 20 },
      ladder: [{ load: 1, offBelow: 0.3 }],
    };
    const input = { system, record: twoYears, startKwh: 8, lengths: [96, 120, 132] };
    const sample = sampleOutages(input);
    const every = sampleOutages({ ...input, everyHours: 1 });
    expect(sample[0]!.all!.sampled).toBe(Math.ceil((730 * 24) / 37));
    expect(every[0]!.all!.sampled).toBe(730 * 24);
    let between = 0;
    sample.forEach((odds, i) => {
      const truth = every[i]!.all!.share;
      if (truth > 0.05 && truth < 0.95) between += 1;
      const error = odds.all!.standardError;
      if (error === null) expect(odds.all!.share).toBeCloseTo(truth, 2);
      else expect(Math.abs(odds.all!.share - truth)).toBeLessThan(2 * error);
    });
    expect(between).toBeGreaterThan(1); // at least two lengths for which riding through is in doubt
  });

  it('are the odds of the passes when every hour is walked and nothing depends on charge', () => {
    const record = madeUpRecord(365, 78, 4, 0.5);
    const loadKw = record.loadsKw[0]!.map((kw, t) => kw + record.loadsKw[1]![t]!);
    const { netKwh } = netEnergy({ loadKw, supplyKw: record.solarKw, limits });
    const passes = oddsFromFull(hoursSurvived({ netKwh, capKwh: 8, limitHours: 168 }), [24, 168]);
    const walks = sampleOutages({
      system: batteryOnly(8),
      record,
      startKwh: 8,
      lengths: [24, 168],
      everyHours: 1,
    });
    passes.forEach((odds, i) => {
      expect(walks[i]!.all!.share).toBeCloseTo(odds.all!, 12);
      odds.months.forEach((share, m) => {
        expect(walks[i]!.months[m]!.share).toBeCloseTo(share!, 12);
      });
    });
    const worst = walks[1]!;
    const failed = Object.values(worst.failures).reduce((a, b) => a + b, 0);
    expect(failed).toBe(Math.round((1 - worst.all!.share) * worst.all!.sampled));
    expect(worst.unserved!.kWh).toBeGreaterThan(0);
    expect(walks[0]!.unserved).toBeNull();
  });

  it('come upon every hour of the day', () => {
    const hours = new Set<number>();
    for (let start = 0; start < 37 * 24; start += 37) hours.add(start % 24);
    expect(hours.size).toBe(24);
  });

  it('have none for a record shorter than the outage', () => {
    const short = madeUpRecord(2, 1, 4, 0.5);
    const odds = sampleOutages({ system: batteryOnly(8), record: short, startKwh: 8 });
    expect(odds[0]!.all).not.toBeNull();
    expect([odds[4]!.all, odds[4]!.months[0], odds[4]!.unserved]).toEqual([null, null, null]);
  });
});

describe('the standard error of a share from clustered outages', () => {
  it('is that of a mean of months when each month has as many, by hand', () => {
    // three Januaries with 2, 1 and 0 of 2: shares 1, 0.5, 0; sd 0.5, error 0.5 / sqrt 3
    const tally = new MonthTally(3 * 8760);
    [2, 1, 0].forEach((rode, year) => {
      for (const i of [0, 1]) tally.add(8760 * year + 37 * i, i < rode);
    });
    const got = tally.share([0])!;
    expect(got.share).toBeCloseTo(0.5, 12);
    expect(got.standardError).toBeCloseTo(0.5 / Math.sqrt(3), 12);
    expect(got.sampled).toBe(6);
    // a July in which every outage is ridden through in both years adds starts and no doubt
    for (const start of [4400, 8760 + 4400]) tally.add(start, true);
    const both = tally.share([0, 6])!;
    expect(both.share).toBeCloseTo(5 / 8, 12);
    expect(both.standardError).toBeCloseTo((0.5 / Math.sqrt(3)) * (6 / 8), 12);
    expect(tally.share([3])).toBeNull();
  });

  it('is not claimed when all are alike or a month is seen in one year only', () => {
    const same = new MonthTally(2 * 8760);
    for (const start of [0, 8760]) same.add(start, true);
    expect(same.share([0])).toEqual({ share: 1, standardError: null, sampled: 2 });
    const once = new MonthTally(8760);
    for (const start of [0, 37]) once.add(start, start === 0);
    expect(once.share([0])!.standardError).toBeNull();
  });
});
