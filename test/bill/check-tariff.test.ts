import { describe, expect, test } from 'vitest';
import { checkTariff } from '../../src/bill/tariff/check-tariff';
import { demoTariffs } from '../../src/bill/tariff/demo-tariffs';
import { readTariff } from '../../src/bill/tariff/read-tariff';
import type { Tariff, TariffSeason } from '../../src/bill/tariff/tariff';
import { sayTariffFault } from '../../src/words/en/tariff/say-tariff-fault';
import { sayTariffProblem } from '../../src/words/en/tariff/say-tariff-problem';
import { tariffInWords } from '../../src/words/en/tariff/tariff-in-words';

const season = (change: Partial<TariffSeason>): TariffSeason => ({
  name: 'all year',
  from: '01-01',
  to: '12-31',
  periods: [{ name: 'all hours', price: 0.2 }],
  ...change,
});
const tariff = (...seasons: TariffSeason[]): Tariff => ({
  name: 'test',
  fixed: {},
  seasons,
  export: { rule: 'none' },
});

const problemsIn = (of: Tariff) => checkTariff(of).map(sayTariffProblem);

describe('a tariff that is wrong says where to look', () => {
  test('two periods over the same hour', () => {
    const periods = [
      { name: 'peak', price: 0.4, hours: [[16, 21]] as [number, number][] },
      { name: 'late', price: 0.3, hours: [[20, 23]] as [number, number][] },
      { name: 'rest', price: 0.1 },
    ];
    expect(problemsIn(tariff(season({ periods })))[0]).toBe(
      'season "all year": periods "peak" and "late" both cover 20:00 to 21:00 on weekdays. Shorten one of them.',
    );
  });

  test('an hour no period covers', () => {
    const periods = [
      {
        name: 'peak',
        price: 0.4,
        days: 'weekdays' as const,
        hours: [[0, 24]] as [number, number][],
      },
      {
        name: 'weekend',
        price: 0.1,
        days: 'weekends' as const,
        hours: [[1, 24]] as [number, number][],
      },
    ];
    expect(problemsIn(tariff(season({ periods })))).toEqual([
      'season "all year": no period covers 0:00 to 1:00 on weekends. Give that time a price.',
    ]);
  });

  test('two seasons over the same day, and a gap between seasons', () => {
    const summer = season({ name: 'summer', from: '06-01', to: '09-30' });
    const winter = season({ name: 'winter', from: '09-30', to: '05-31' });
    expect(problemsIn(tariff(summer, winter))[0]).toContain(
      '"summer" and "winter" both cover 9/30',
    );
    const short = season({ name: 'winter', from: '10-02', to: '05-31' });
    expect(problemsIn(tariff(summer, short))[0]).toContain('no season covers 10/1');
  });

  test('tiers out of order', () => {
    const tiers = [{ upToKwh: 500, price: 0.1 }, { upToKwh: 300, price: 0.2 }, { price: 0.3 }];
    const problems = problemsIn({ ...tariff(season({ tiers })), tierBasis: 'month' });
    expect(problems).toEqual([
      'season "all year": tier 2 ends at 300 kWh, not after tier 1 (500 kWh).',
    ]);
  });

  test('a holiday nobody knows', () => {
    const problems = problemsIn({ ...tariff(season({})), holidays: ['christmas', 'flag-day'] });
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain('"flag-day"');
  });

  test('net metering of the total with more than one price', () => {
    const periods = [
      { name: 'peak', price: 0.4, hours: [[16, 21]] as [number, number][] },
      { name: 'rest', price: 0.1 },
    ];
    const rule = {
      rule: 'net-metering',
      netting: 'total',
      trueUpMonth: 1,
      trueUpPrice: 0,
    } as const;
    expect(problemsIn({ ...tariff(season({ periods })), export: rule })[0]).toContain('by-period');
  });
});

test('negative prices are allowed', () => {
  expect(checkTariff(tariff(season({ periods: [{ name: 'night', price: -0.03 }] })))).toEqual([]);
});

test('a period may run past midnight', () => {
  const periods = [
    { name: 'night', price: 0.1, hours: [[21, 6]] as [number, number][] },
    { name: 'day', price: 0.3, hours: [[6, 21]] as [number, number][] },
  ];
  expect(checkTariff(tariff(season({ periods })))).toEqual([]);
});

test('the four demo tariffs fit the schema and are whole', () => {
  for (const demo of demoTariffs.rows.map(tariffInWords))
    expect(readTariff(demo).faults, demo.name).toEqual([]);
});

test('a word the form does not know is named', () => {
  const read = readTariff({ ...tariffInWords(demoTariffs.rows[0]!), fixd: 3 });
  expect(read.tariff).toBeNull();
  expect(sayTariffFault(read.faults[0]!)).toContain('fixd');
});
