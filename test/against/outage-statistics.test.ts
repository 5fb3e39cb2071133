import { describe, expect, it, test } from 'vitest';
import {
  nationalOutages,
  outagesByState,
  outagesNational,
  poolYears,
  sayOutageRecord,
  stateOutages,
} from '../../src/tables/outage-statistics';

/** Minutes an interruption as printed, all events: EIA Electric Power Annual 2023, Table 11.1, any method. */
const CAIDI_NATIONAL = [179.6, 164.5, 192.9, 339.3, 261.5, 214.8, 341.7, 308.8, 238.8, 256.6];
/** The same without major events, 2014 to 2022. */
const CAIDI_ORDINARY = [107.7, 108.1, 110, 113.6, 114, 116.6, 114.7, 118.5, 118.1];
/** Minutes an interruption as printed in Table 11.3: all events and ordinary, in the order of our rows. */
const CAIDI_STATES: [number, number | null][] = [
  [188.8, 107.3],
  [191.8, 106.4],
  [562.2, 125],
  [321.1, 110.8],
  [245.4, 105.4],
  [151, 93.8],
  [368.5, 126.1],
  [345.9, 115.6],
  [133.7, 78.3],
  [85.4, 78.2],
  [316.5, 140],
  [367.8, 136],
  [123, 106.5],
  [102.4, 94.3],
  [165.6, 119.4],
  [232.7, 116.5],
  [228, 135.8],
  [175.9, 130.4],
  [249.2, 92.9],
  [118.9, 91.4],
  [314.8, 116.6],
  [195.3, 122.4],
  [723.5, 176.7],
  [383.2, 163.6],
  [292.5, null],
  [272.4, null],
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

  it('does so for every state and both years', () => {
    CAIDI_STATES.forEach(([all, ordinary], i) => {
      const row = outagesByState.rows[i]!;
      const { minutesPerYear: minutes, timesPerYear: times } = row;
      const off = Math.abs(minutes / times - all);
      expect(off, `${row.state} ${row.year}`).toBeLessThanOrEqual(slack(minutes, times));
      if (ordinary === null) return;
      const plain = row.minutesPerYearOrdinary!;
      const often = row.timesPerYearOrdinary!;
      expect(Math.abs(plain / often - ordinary)).toBeLessThanOrEqual(slack(plain, often));
    });
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

  it('splits a state, like the nation where it has no split, and has none for a state not in the table', () => {
    const maine = stateOutages('me')!;
    expect(maine.ordinary.timesPerYear).toBeCloseTo((1.979 + 1.956) / 2, 12);
    expect(maine.major.timesPerYear).toBeCloseTo((3.314 - 1.979 + 3.001 - 1.956) / 2, 12);
    const ohio = stateOutages('OH')!;
    const us = nationalOutages();
    const share = us.ordinary.timesPerYear / (us.ordinary.timesPerYear + us.major.timesPerYear);
    expect(ohio.ordinary.timesPerYear).toBeCloseTo((share * (1.252 + 1.517)) / 2, 12);
    const hours = [ohio.ordinary, ohio.major].reduce(
      (sum, o) => sum + o.timesPerYear * o.meanHours,
      0,
    );
    expect(hours).toBeCloseTo((366.2 + 413.2) / 2 / 60, 9);
    expect(stateOutages('TX')).toBeNull();
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

test('the record that stands for a home is named with its years, and a state without one with the gap', () => {
  expect(sayOutageRecord('me')).toContain('outage record of ME, 2022 to 2023');
  expect(sayOutageRecord('CA')).toContain('outage record of CA, 2022,');
  const known = new Set(outagesByState.rows.map((row) => row.state));
  expect(sayOutageRecord('TX')).toContain(`knows ${known.size} states, and TX is not among them`);
  expect(sayOutageRecord(null)).toMatch(/of the US, \d{4} to \d{4}$/);
});
