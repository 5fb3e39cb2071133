import { beforeAll, describe, expect, test } from 'vitest';
import { MONTH_DAYS, MONTH_START } from '../../src/physics/weather/calendar';
import { lag1WithinMonths } from '../../src/physics/weather/lag1';
import { type MonthStatistics, monthStatistics } from '../../src/physics/weather/month-statistics';
import { weatherYears } from '../../src/physics/weather/weather-years';
import { allStations, type Station } from '../../src/tables/place/climate';
import { persistenceFigures } from '../../src/tables/place/weather-persistence';

// Targets worked out from the TMY3 hours of 1,020 stations (Wilcox & Marion 2008,
// NREL/TP-581-43156). Every sixteenth station in the file's order in the quick suite; set
// EVERY_STATION=1 for all of them, which takes about a minute.
const EVERY = process.env.EVERY_STATION ? 1 : 16;

interface Made {
  station: Station;
  months: MonthStatistics[];
  clearnessLag1: number;
  temperatureLag1: number;
  /** Standard deviation of daily mean temperature within months, mean over years, January first, K. */
  scatterK: number[];
}

let made: Made[] = [];

beforeAll(() => {
  made = allStations()
    .filter((_, i) => i % EVERY === 0)
    .map((station, i) => {
      const weather = weatherYears({
        climate: station.climate,
        persistence: persistenceFigures(station.climate),
        latDeg: station.latDeg,
        years: 100,
        seed: 20261125 + i,
      });
      return {
        station,
        months: monthStatistics(weather),
        clearnessLag1: lag1WithinMonths(weather.clearness)!,
        temperatureLag1: lag1WithinMonths(weather.meanC)!,
        scatterK: scatterWithinMonths(weather.meanC),
      };
    });
}, 300_000);

function scatterWithinMonths(days: Float32Array): number[] {
  const years = days.length / 365;
  return MONTH_DAYS.map((length, m) => {
    let sum = 0;
    for (let year = 0; year < years; year++) {
      const start = year * 365 + MONTH_START[m]!;
      const month = days.subarray(start, start + length);
      const mean = month.reduce((whole, c) => whole + c, 0) / length;
      sum += Math.sqrt(month.reduce((whole, c) => whole + (c - mean) ** 2, 0) / (length - 1));
    }
    return sum / years;
  });
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}

const eachMonth = () =>
  made.flatMap(({ station, months }) => months.map((month, m) => ({ station, month, m })));

describe('100 synthetic years, pooled, against the station figures they start from', () => {
  test('the mean sun of every month is within 1 %', () => {
    for (const { station, month, m } of eachMonth()) {
      const target = station.climate.ghiKwhPerM2Day[m]!;
      const off = Math.abs(month.ghiKwhPerM2Day - target);
      // The last printed digit is 0.01: beside polar night it can be twilight bent over the horizon.
      const lastDigit = target <= 0.01 ? 0.01 : 0;
      expect(off, station.name).toBeLessThanOrEqual(Math.max(0.01 * target, lastDigit));
    }
  });

  test('the spread of daily clearness is within 10 % wherever there is a day of sun to spread', () => {
    const doubtful: string[] = [];
    let compared = 0;
    for (const { station, month, m } of eachMonth()) {
      const target = station.climate.clearnessSpread[m];
      if (target === null || target === undefined) continue;
      compared++;
      if (month.clearnessSpread < 0.9 * target || month.clearnessSpread > 1.1 * target) {
        doubtful.push(`${station.name} ${m + 1}`);
        // Only the sliver of sun beside polar night, under 0.1 kWh/m2 a day, may miss.
        expect(station.climate.ghiKwhPerM2Day[m], station.name).toBeLessThan(0.1);
      }
    }
    console.log(`spread missed by over 10 %: ${doubtful.length} of ${compared} ${doubtful}`);
    expect(compared).toBeGreaterThan(made.length * 11);
  });

  test('mean and range of temperature of every month are within 0.3 K', () => {
    for (const { station, month, m } of eachMonth()) {
      expect(Math.abs(month.meanC - station.climate.meanC[m]!)).toBeLessThan(0.3);
      expect(Math.abs(month.rangeK - station.climate.rangeK[m]!)).toBeLessThan(0.3);
    }
  });
});

describe('how days hang together', () => {
  test('clearness and temperature lean on the day before as at each station, within 0.06 and 0.09', () => {
    for (const { station, clearnessLag1, temperatureLag1 } of made) {
      const { climate } = station;
      expect(Math.abs(clearnessLag1 - climate.clearnessLag1), station.name).toBeLessThan(0.06);
      expect(Math.abs(temperatureLag1 - climate.temperatureLag1), station.name).toBeLessThan(0.09);
    }
  });

  test('days stray within a month as at each station, within 12 % in nine months in ten', () => {
    const off = made
      .flatMap(({ station, scatterK }) =>
        scatterK.map((k, m) => Math.abs(k / station.climate.daySpreadK[m]! - 1)),
      )
      .sort((a, b) => a - b);
    expect(median(off)).toBeLessThan(0.05);
    expect(off[Math.floor(0.9 * off.length)]!).toBeLessThan(0.12);
  });
});

describe('how days hang together, medians over stations', () => {
  test('clearness leans on the day before by 0.24 within 0.05', () => {
    const lag1 = median(made.map((one) => one.clearnessLag1));
    console.log(`lag-1 of clearness ${lag1.toFixed(3)}`);
    expect(Math.abs(lag1 - 0.24)).toBeLessThan(0.05);
  });

  test('temperature leans on the day before by 0.65 within 0.05', () => {
    const lag1 = median(made.map((one) => one.temperatureLag1));
    console.log(`lag-1 of temperature ${lag1.toFixed(3)}`);
    expect(Math.abs(lag1 - 0.65)).toBeLessThan(0.05);
  });

  test.each([
    ['January', 0, 0.52, 0.72],
    ['July', 6, 0.69, 0.84],
  ])('the darkest 3 and 7 days of %s are within 0.05 of those of the stations', (...row) => {
    const [name, m, target3, target7] = row;
    const run = (of: (month: MonthStatistics) => number | null) =>
      median(made.flatMap(({ months }) => of(months[m]!) ?? []));
    const three = run((month) => month.darkest3Days);
    const seven = run((month) => month.darkest7Days);
    console.log(`${name}: darkest 3 days ${three.toFixed(3)}, 7 days ${seven.toFixed(3)}`);
    expect(Math.abs(three - target3)).toBeLessThan(0.05);
    expect(Math.abs(seven - target7)).toBeLessThan(0.05);
  });

  test('a bad January stays bad: its mean scatters between years by 4 % or more', () => {
    const scatter = median(made.flatMap(({ months }) => months[0]!.betweenYears ?? []));
    console.log(`January between years ${(scatter * 100).toFixed(1)} %`);
    expect(scatter).toBeGreaterThan(0.04);
  });
});
