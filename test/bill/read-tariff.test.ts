import { describe, expect, test } from 'vitest';
import { demoTariffs } from '../../src/bill/tariff/demo-tariffs';
import { readTariff, readTariffFile } from '../../src/bill/tariff/read-tariff';
import { tariffJsonSchema } from '../../src/bill/tariff/tariff-schema';
import { sayTariffFault } from '../../src/words/en/tariff/say-tariff-fault';
import { tariffInWords } from '../../src/words/en/tariff/tariff-in-words';

const whole = {
  lampkeeperTariff: 1,
  name: 'mine',
  fixed: { perMonth: 10 },
  seasons: [
    {
      name: 'all year',
      from: '01-01',
      to: '12-31',
      periods: [
        { name: 'peak', price: 0.4, hours: [[16, 21]] },
        { name: 'rest', price: 0.2 },
      ],
    },
  ],
  export: { rule: 'none' },
};
const season = whole.seasons[0]!;
const withSeason = (changed: object) => ({ ...whole, seasons: [{ ...season, ...changed }] });

test('a whole tariff is read, and so is every demo tariff with its first line', () => {
  expect(readTariffFile(whole).tariff?.name).toBe('mine');
  for (const demo of demoTariffs.rows.map(tariffInWords)) {
    expect(readTariffFile({ lampkeeperTariff: 1, ...demo }).tariff, demo.name).toEqual(demo);
  }
});

describe('a fault is said in a plain sentence with its place', () => {
  const cases: [string, object, (string | number)[], string][] = [
    ['an unknown key', { ...whole, fixd: 1 }, ['fixd'], '"fixd" does not belong here'],
    ['a missing part', { ...whole, export: undefined }, ['export'], 'export: is missing'],
    ['words for a number', { ...whole, minimumBill: 'ten' }, ['minimumBill'], 'must be a number'],
    [
      'another day of the week',
      withSeason({ periods: [{ ...season.periods[1], days: 'monday' }] }),
      ['seasons', 0, 'periods', 0, 'days'],
      'seasons 1, periods 1, days: must be one of: every, weekdays, weekends',
    ],
    [
      'another rule',
      { ...whole, export: { rule: 'barter' } },
      ['export', 'rule'],
      'must be one of: none, net-metering',
    ],
    [
      'a window of 20 minutes',
      {
        ...whole,
        demand: [
          { name: 'd', windowMinutes: 20, prices: [{ from: '01-01', to: '12-31', perKw: 1 }] },
        ],
      },
      ['demand', 0, 'windowMinutes'],
      'must be one of: 15, 30, 60',
    ],
    [
      'a tax in percent',
      { ...whole, taxes: [{ name: 't', share: 6, on: 'bill' }] },
      ['taxes', 0, 'share'],
      '6 % is written 0.06',
    ],
    [
      'an hour past midnight',
      withSeason({ periods: [{ name: 'a', price: 1, hours: [[16, 25]] }] }),
      ['seasons', 0, 'periods', 0, 'hours', 0, 1],
      'must be at most 24',
    ],
    [
      'cents for dollars',
      withSeason({ periods: [{ name: 'a', price: 16.5 }] }),
      ['seasons', 0, 'periods', 0, 'price'],
      'write 0.165 for 16.5 cents',
    ],
    [
      'an overlap',
      withSeason({
        periods: [...season.periods, { name: 'evening', price: 0.3, hours: [[20, 22]] }],
      }),
      ['seasons', 0, 'periods', 2],
      'periods "peak" and "evening" both cover 20:00 to 21:00',
    ],
    [
      'a gap',
      withSeason({ periods: [season.periods[0]] }),
      ['seasons', 0, 'periods', 0],
      'no period covers 0:00',
    ],
    ['a gap in the year', withSeason({ to: '11-30' }), ['seasons'], 'no season covers 12/1'],
    [
      'tiers out of order',
      {
        ...withSeason({
          tiers: [{ upToKwh: 500, price: 0.1 }, { upToKwh: 300, price: 0.1 }, { price: 0.2 }],
        }),
        tierBasis: 'month',
      },
      ['seasons', 0, 'tiers', 1],
      'tier 2 ends at 300 kWh, not after tier 1 (500 kWh)',
    ],
    [
      'no hours between',
      withSeason({ periods: [{ name: 'a', price: 0.1, hours: [[5, 5]] }, season.periods[1]] }),
      ['seasons', 0, 'periods', 0, 'hours'],
      'starts and ends at 5:00',
    ],
    [
      'a holiday nobody knows',
      { ...whole, holidays: ['constructor'] },
      ['holidays', 0],
      'is not known',
    ],
    [
      'a day of month 13',
      withSeason({ from: '13-01' }),
      ['seasons', 0, 'from'],
      'seasons 1, from: write the day as MM-DD.',
    ],
    ['a later form', { ...whole, lampkeeperTariff: 2 }, ['lampkeeperTariff'], 'reads form 1'],
    [
      'no first line',
      { ...whole, lampkeeperTariff: undefined },
      [],
      'is missing. Add it as the first line',
    ],
  ];
  test.each(cases)('%s', (_, data, path, says) => {
    const read = readTariffFile(data);
    expect(read.tariff).toBeNull();
    const fault = read.faults.find((one) => sayTariffFault(one).includes(says));
    expect(fault, JSON.stringify(read.faults)).toBeDefined();
    expect(fault!.path).toEqual(path);
    expect(sayTariffFault(fault!)).not.toMatch(/expected|received|Invalid|undefined/);
  });
});

test('no data at all makes a throw', () => {
  for (const data of [null, undefined, 'x', 3, [], [1], { lampkeeperTariff: 1 }, { seasons: 3 }]) {
    expect(readTariffFile(data).faults.length).toBeGreaterThan(0);
    expect(readTariff(data).faults.length).toBeGreaterThan(0);
  }
});

test('a negative price and one of 50 cents are right', () => {
  const prices = withSeason({
    periods: [
      { name: 'a', price: -0.02, hours: [[1, 4]] },
      { name: 'b', price: 0.5 },
    ],
  });
  expect(readTariffFile(prices).faults).toEqual([]);
});

test('the form is a JSON Schema that asks for its first line', () => {
  expect(tariffJsonSchema()).toMatchObject({
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    required: expect.arrayContaining(['lampkeeperTariff', 'seasons', 'export']),
    additionalProperties: false,
  });
});
