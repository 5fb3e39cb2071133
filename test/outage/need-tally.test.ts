import { describe, expect, it } from 'vitest';
import { neededForEveryStart } from '../../src/outage/every-start';
import { hoursSurvived } from '../../src/outage/hours-survived';
import { NeedTally } from '../../src/outage/need-tally';
import { oddsFromFull } from '../../src/outage/ride-through-odds';
import { WHOLE_YEAR } from '../../src/outage/season';
import { sizeForShareOfOutages, sizeForShareOfYears } from '../../src/outage/size-by-odds';
import { madeUpHours } from './plain-walk';

const YEARS = 6;
const net = madeUpHours(YEARS * 8760, 31, 4.5, 0.4);
const winter = { firstMonth: 11, months: 3 };

function tallied(outageHours: number, mostKwh?: number): NeedTally {
  const tally = new NeedTally({ outageHours, mostKwh });
  for (let y = 0; y < YEARS; y++) tally.addYear(net.subarray(8760 * y, 8760 * (y + 1)));
  tally.finish();
  return tally;
}

describe('storage needed, gathered year by year', () => {
  it('sizes as the whole record does, rounded up by at most a bin', () => {
    for (const hours of [1, 72, 336]) {
      const needed = neededForEveryStart(net, hours);
      const tally = tallied(hours);
      for (const season of [winter, WHOLE_YEAR, { firstMonth: 5, months: 3 }]) {
        for (const share of [0.5, 0.9, 1]) {
          const size = tally.sizeForShareOfOutages(season, share)!;
          const exact = sizeForShareOfOutages(needed, season, share)!;
          expect(size).toBeGreaterThan(exact - 1e-6);
          expect(size).toBeLessThan(exact + 0.02 + 1e-6);
          expect(tally.sizeForShareOfYears(season, share)).toBeCloseTo(
            sizeForShareOfYears(needed, season, share)!,
            9,
          );
        }
      }
    }
  });

  it('gives the odds of the whole record at sizes on a bin, by month', () => {
    const capKwh = 8;
    const survived = hoursSurvived({ netKwh: net, capKwh, limitHours: 168 });
    const odds = tallied(168).odds(capKwh);
    const [exact] = oddsFromFull(survived, [168]);
    expect(odds.all).toBeCloseTo(exact!.all!, 12);
    odds.months.forEach((share, m) => {
      expect(share).toBeCloseTo(exact!.months[m]!, 12);
    });
  });

  it('says that more than its largest bin is needed, and knows nothing of no years', () => {
    expect(tallied(72, 1).sizeForShareOfOutages(winter, 0.99)).toBeNull();
    expect(tallied(72, 1).odds(500).all).toBeLessThan(1);
    const none = new NeedTally({ outageHours: 24 });
    none.finish();
    expect(none.odds(10)).toEqual({ months: new Array(12).fill(null), all: null });
    expect(none.sizeForShareOfOutages(winter, 0.9)).toBeNull();
    expect(none.sizeForShareOfYears(winter, 0.9)).toBeNull();
    expect(() => none.addYear(new Float64Array(24))).toThrow(/8760 h: 24 h/);
  });
});
