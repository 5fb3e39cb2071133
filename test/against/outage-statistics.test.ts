import { describe, expect, it, test } from 'vitest';
import {
  nationalOutages,
  outageRecord,
  outagesByState,
  outagesNational,
  poolYears,
  stateOutages,
} from '../../src/tables/outage-statistics';
import { sayOutageRecord } from '../../src/words/en/place/say-outage-record';

/** Minutes an interruption as printed, all events: EIA Electric Power Annual 2023, Table 11.1, any method. */
const CAIDI_NATIONAL = [179.6, 164.5, 192.9, 339.3, 261.5, 214.8, 341.7, 308.8, 238.8, 256.6];
/** The same without major events, 2014 to 2022. */
const CAIDI_ORDINARY = [107.7, 108.1, 110, 113.6, 114, 116.6, 114.7, 118.5, 118.1];
/**
 * The same survey by two other tables: Table 11.3, any method (OH), and a federal page on state regulators (the rest). All
 * utilities stand in them, so they need not be equal: minutes and times a year.
 */
const ELSEWHERE: [state: string, year: number, minutes: number, times: number][] = [
  ['OH', 2023, 366.2, 1.252],
  ['OH', 2022, 413.2, 1.517],
  ['CA', 2022, 199, 1.25],
  ['WA', 2022, 395, 1.48],
  ['WI', 2022, 274, 1.04],
  ['WV', 2022, 1003, 2.74],
];

/** Both factors are printed rounded: minutes to 0.1, times to 0.001. */
const slack = (minutes: number, times: number) =>
  (minutes / times) * (0.05 / minutes + 0.0005 / times) + 0.05;

describe('outage statistics, against the arithmetic of the EIA tables', () => {
  it('has minutes a year over times a year equal to the printed minutes an interruption', () => {
    outagesNational.rows.forEach((row, i) => {
      const { minutesPerYear: minutes, timesPerYear: times } = row;
      const off = Math.abs(minutes / times - CAIDI_NATIONAL[i]!);
      expect(off, `${row.year}`).toBeLessThanOrEqual(slack(minutes, times));
      const { minutesPerYearOrdinary: plain, timesPerYearOrdinary: often } = row;
      if (plain === null || often === null) return;
      expect(Math.abs(plain / often - CAIDI_ORDINARY[i]!)).toBeLessThanOrEqual(slack(plain, often));
    });
  });

  it('does so for every state and year', () => {
    for (const row of outagesByState.rows) {
      const { minutesPerYear: minutes, timesPerYear: times, minutesEach } = row;
      const off = Math.abs(minutes / times - minutesEach);
      expect(off, `${row.state} ${row.year}`).toBeLessThanOrEqual(slack(minutes, times));
      if (row.minutesEachOrdinary === null) continue;
      const plain = row.minutesPerYearOrdinary!;
      const often = row.timesPerYearOrdinary!;
      const offPlain = Math.abs(plain / often - row.minutesEachOrdinary);
      expect(offPlain, `${row.state} ${row.year}`).toBeLessThanOrEqual(slack(plain, often));
    }
  });

  it('has ten years of each state but Hawaii, once each', () => {
    const years = new Map<string, Set<number>>();
    for (const { state, year } of outagesByState.rows) {
      years.set(state, (years.get(state) ?? new Set()).add(year));
    }
    expect(years.size).toBe(51);
    for (const [state, held] of years) expect(held.size, state).toBe(state === 'HI' ? 7 : 10);
    expect(outagesByState.rows).toHaveLength(507);
  });

  it('is near what other tables of the same survey say of a state', () => {
    for (const [state, year, minutes, times] of ELSEWHERE) {
      const row = outagesByState.rows.find((one) => one.state === state && one.year === year)!;
      expect(Math.abs(row.minutesPerYear / minutes - 1), state).toBeLessThan(0.15);
      expect(Math.abs(row.timesPerYear / times - 1), state).toBeLessThan(0.15);
    }
  });

  it('averages, as EIA says of 2014-2023, about 2 hours of ordinary and nearly 4 of major outages a year', () => {
    // EIA Today in Energy, 2025-12-01
    const { ordinary, major } = nationalOutages();
    expect(ordinary.timesPerYear * ordinary.meanHours).toBeCloseTo(2, 0);
    const majorHours = major.timesPerYear * major.meanHours;
    expect(majorHours).toBeGreaterThan(3.3);
    expect(majorHours).toBeLessThan(4.2);
    // pooled 2014-2022 by hand: (3044.7 - 1056.1) / 60 over 12.072 - 9.305
    expect(major.timesPerYear).toBeCloseTo((12.072 - 9.305) / 9, 9);
    expect(major.meanHours).toBeCloseTo((3044.7 - 1056.1) / 60 / (12.072 - 9.305), 9);
  });

  it('splits a state, like the nation where it has no split, and has none for a place not in the table', () => {
    const maine = stateOutages('me')!;
    // by hand: the ten ordinary times add up to 19.796, all ten to 30.497
    expect(maine.ordinary.timesPerYear).toBeCloseTo(1.9796, 12);
    expect(maine.major.timesPerYear).toBeCloseTo((30.497 - 19.796) / 10, 12);
    const us = nationalOutages();
    const share = us.ordinary.timesPerYear / (us.ordinary.timesPerYear + us.major.timesPerYear);
    const year = { minutesPerYearOrdinary: null, timesPerYearOrdinary: null };
    const whole = [
      { ...year, year: 2023, minutesPerYear: 366.2, timesPerYear: 1.252 },
      { ...year, year: 2022, minutesPerYear: 413.2, timesPerYear: 1.517 },
    ];
    const pooled = poolYears(whole, us)!;
    expect(pooled.ordinary.timesPerYear).toBeCloseTo((share * (1.252 + 1.517)) / 2, 12);
    const hours = [pooled.ordinary, pooled.major].reduce(
      (sum, o) => sum + o.timesPerYear * o.meanHours,
      0,
    );
    expect(hours).toBeCloseTo((366.2 + 413.2) / 2 / 60, 9);
    expect(stateOutages('PR')).toBeNull();
    expect(poolYears([])).toBeNull();
    for (const { state } of outagesByState.rows) {
      const { ordinary, major } = stateOutages(state)!;
      expect(ordinary.meanHours, state).toBeGreaterThan(1);
      expect(ordinary.meanHours, state).toBeLessThan(4);
      expect(major.meanHours, state).toBeGreaterThan(3);
      expect(major.meanHours, state).toBeLessThan(30);
    }
  });
});

test('the record that stands for a home is named with its years, and a place without one with the gap', () => {
  expect(sayOutageRecord(outageRecord('me'))).toContain('outage record of Maine, 2014 to 2023,');
  expect(sayOutageRecord(outageRecord('MA'))).toContain(
    'outage record of Massachusetts, 9 years of 2014 to 2023,',
  );
  expect(sayOutageRecord(outageRecord('HI'))).toContain('outage record of Hawaii, 2015 to 2020,');
  expect(sayOutageRecord(outageRecord('PR'))).toContain('our table has no figures of Puerto Rico');
  expect(sayOutageRecord(outageRecord(null))).toMatch(/of the US, \d{4} to \d{4}$/);
});
