import { describe, expect, test } from 'vitest';
import { resultOf, runCalc, workOf } from './run-calc';

// One published worked case for each computation of sun, outages and money; more stand in test/against.

describe('sun-position', () => {
  const spa =
    'sun-position lat=39.742476 lon=-105.1786 date=2003-10-17 time=12:30:30 utc-offset=-7';

  test('the worked example of the SPA report (Reda & Andreas 2004, NREL/TP-560-34302)', async () => {
    // 0.02 degree: the stated accuracy of the almanac, 0.01, with room for delta-T.
    expect(Math.abs((await resultOf(spa, 'elevation')) - 39.872046)).toBeLessThan(0.02);
    expect(Math.abs((await resultOf(spa, 'bearing')) - 194.340241)).toBeLessThan(0.02);
  });

  test('Golden on 2 January 2015: 07:21:55, 12:04:45 and 16:47:43 to the minute (pvlib, test data)', async () => {
    const { result } = await workOf(spa.replace('2003-10-17', '2015-01-02'));
    expect(result.slice(2).map((one) => one.value)).toEqual(['07:22', '12:05', '16:48']);
  });

  test('in polar night the sun stays down, in words', async () => {
    const { out } = await runCalc(
      ...'sun-position lat=71.3 lon=-156.8 date=2026-12-21 time=12:00 utc-offset=-9'.split(' '),
    );
    expect(out).toContain('sunrise: the sun stays down all day');
  });

  test('a day that is not in the calendar has no sun', async () => {
    const { code, err } = await runCalc(...spa.replace('2003-10-17', '2003-02-30').split(' '));
    expect(code).toBe(1);
    expect(err).toContain('there is no 2003-02-30');
  });
});

/** Phoenix Sky Harbor, January first: kWh/m2 a day on the level, and mean C. */
const PHOENIX_SUN = [3.29, 4.16, 5.34, 7.09, 7.84, 8.32, 7.62, 7.13, 6.34, 4.82, 3.77, 3.07];
const PHOENIX_C = [13.0, 15.7, 17.3, 23.7, 27.3, 34.0, 35.6, 33.8, 30.4, 24.8, 17.9, 11.7];

test('roof-yield: Phoenix gives 1760.9 kWh a kW on 30 degrees south, within 5 % (TMY3 hour by hour, see test/against/fixtures)', async () => {
  const line = 'roof-yield zip=85034 panels=1 inverter=1 tilt=30 losses=14 snow=no years=30';
  const kwh = await resultOf(line, 'year');
  expect(Math.abs(kwh / 1760.9 - 1)).toBeLessThan(0.05);
});

test('weather-year: Phoenix keeps the sun and warmth of its station within 3 % and 1 K (TMY3, NREL/TP-581-43156)', async () => {
  // The home blends in stations near by, so not the 1 % of the generator itself.
  const { steps } = await workOf('weather-year zip=85034');
  PHOENIX_SUN.forEach((ghi, m) => {
    expect(Math.abs(steps[m]!.value / ghi - 1)).toBeLessThan(0.03);
  });
  PHOENIX_C.forEach((c, m) => {
    expect(Math.abs(steps[12 + m]!.value - c)).toBeLessThan(1);
  });
});

describe('ride-through without sun is energy over power', () => {
  const line = 'ride-through zip=80202 usable=10 load=300 years=2 outage=';
  const hours = 10_000 / (300 / 0.92 + 20);

  test('10 kWh at 300 W last 28.9 h from every start', async () => {
    expect(await resultOf(`${line}72`, 'lasts, up to')).toBeCloseTo(hours, 6);
    expect(await resultOf(`${line}72`, 'lasts in all but')).toBeCloseTo(hours, 6);
  });

  test('so all outages of 28 h are ridden through and none of 29 h', async () => {
    expect(await resultOf(`${line}28`, 'outages of')).toBe(100);
    expect(await resultOf(`${line}29`, 'outages of')).toBe(0);
  });

  test('panels never lower the odds', async () => {
    const odds = await resultOf(`${line}48 panels=2`, 'outages of');
    expect(odds).toBeGreaterThan(0);
    expect(odds).toBeLessThan(100);
  });
});

test.each([
  ['time=20 ms', 'stay on'],
  ['time=30 ms', 'may drop out'],
  ['time=500 voltage=70', 'stay on'],
  ['time=600,000 voltage=90', 'stay on'],
])('transfer-time %s: %s (ITI curve, 2000 revision)', async (line, says) => {
  expect((await workOf(`transfer-time ${line}`)).result[0]!.value).toBe(says);
});

describe('largest-start', () => {
  const line =
    'largest-start running=well 2400; fridge 180; saw 1500; lights 100 ' +
    'starting=well 12 kVA; fridge 1000; saw 7500';

  test('the two hardest steps come on top of what runs (arithmetic)', async () => {
    expect(await resultOf(line, 'for a moment')).toBe(4180 + 9600 + 6000);
    expect(await resultOf(`${line} kept-apart=yes`, 'for a moment')).toBe(4180 + 9600);
  });

  test('a saw started by hand still meets the well', async () => {
    const { result } = await workOf(`${line} by-hand=saw`);
    expect(result[1]!.value).toBe('well and saw');
    expect(result[2]!.value).toBe(4180 + 9600 + 820);
  });

  test.each([
    ['running=well 2400 starting=pump 9000', '"pump" is not among running'],
    ['running=well 2400; well 100', '"well" stands twice'],
    ['running=well 2400 starting=well 100', 'less than it runs with'],
  ])('%s has no result', async (inputs, says) => {
    const { code, err } = await runCalc('largest-start', ...inputs.split(' '));
    expect(code).toBe(1);
    expect(err).toContain(says);
  });
});

test('outage-outlook: the nation has 1.034 ordinary outages of 1.88 h a year (EIA Table 11.1, 2014 to 2022)', async () => {
  const minutes = [109.7, 113.1, 116.9, 114.4, 117.2, 118.6, 119, 121.5, 125.7];
  const times = [1.019, 1.046, 1.062, 1.007, 1.028, 1.017, 1.037, 1.025, 1.064];
  const mean = (values: number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const { steps } = await workOf('outage-outlook outage=1');
  expect(steps[0]!.value).toBeCloseTo(mean(times), 9);
  expect(steps[1]!.value).toBeCloseTo(mean(minutes) / 60, 9);
});

describe('bill', () => {
  test('899 kWh at 16.5 cents and 12 dollars (arithmetic)', async () => {
    const total = await resultOf('bill tariff=flat price=16.5 fixed=12 kwh=899 month=4', 'total');
    // 899 x 0.165 is 148.335, on paper 148.34.
    expect(total).toBeCloseTo(12 + 148.34, 9);
  });

  test('the lines add up to the total for every tariff', async () => {
    for (const tariff of ['two-prices', 'three-prices', 'highest-use']) {
      const { steps, result } = await workOf(`bill tariff=${tariff} kwh=930 month=7`);
      const sum = steps.reduce((all, step) => all + step.value, 0);
      expect(sum).toBeCloseTo(result[0]!.value as number, 9);
    }
  });

  test.each([
    ['bill tariff=flat kwh=900', 'also needs price'],
    ['bill tariff=two-prices price=20 kwh=900', 'belong to tariff=flat'],
    ['kept-charge tariff=flat kwh-per-year=9000 usable=10 power=5', 'also needs price'],
    ['battery-savings tariff=highest-use fixed=3 kwh-per-year=9000 usable=10 power=5', 'belong to'],
  ])('%s has no result', async (line, says) => {
    const { code, err } = await runCalc(...line.split(' '));
    expect(code).toBe(1);
    expect(err).toContain(says);
  });
});

describe('a battery in an ordinary home on two periods', () => {
  const battery = 'tariff=two-prices kwh-per-year=10791 usable=10 power=5 round-trip=90.25';

  test('battery-savings saves no more than a full cycle a day can (arithmetic)', async () => {
    const line = `battery-savings ${battery} kept=0`;
    const most = 365 * (9.5 * 0.36 - (10 / 0.95) * 0.15);
    const ceiling = await resultOf(line, 'at the very most');
    const rule = await resultOf(line, 'saved a year');
    expect(ceiling).toBeLessThanOrEqual(most + 2);
    expect(rule).toBeLessThanOrEqual(ceiling + 1e-6);
    expect(await resultOf(line, 'share')).toBeGreaterThan(95);
  });

  test('one price at all hours leaves nothing to save', async () => {
    const flat = battery.replace('tariff=two-prices', 'tariff=flat price=16.5');
    expect(await resultOf(`battery-savings ${flat} kept=0`, 'at the very most')).toBeCloseTo(0, 6);
  });

  test('kept-charge: all of it kept saves nothing, none kept gives nothing up', async () => {
    expect(await resultOf(`kept-charge ${battery} kept=100`, 'still saved')).toBeCloseTo(0, 6);
    expect(await resultOf(`kept-charge ${battery} kept=0`, 'given up')).toBe(0);
  });
});

test('life-cycle-cost: the office air-conditioning example of NIST Handbook 135 (inputs as remembered): 516,221.02 dollars', async () => {
  const line =
    'life-cycle-cost years=20 rate=3% investment=103000 replacement=12000 replacement-year=12 ' +
    'residual=3500 energy=20000 upkeep=7000';
  expect(await resultOf(`${line} energy-factor=15.13`, 'life-cycle')).toBeCloseTo(516_221.02, 2);
  expect(await resultOf(line, 'life-cycle')).toBeCloseTo(511_170.51, 2);
  expect(await resultOf(`${line} energy-rise=1%`, 'life-cycle')).toBeCloseTo(541_275.48, 2);
});
