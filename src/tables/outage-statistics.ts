import national from '#compiled/tables/eia-outages-national.js';
import states from '#compiled/tables/eia-outages-states.js';
import type { Table } from './table';

/** A year of the average customer. Ordinary: without major events; null where the copy read has no figure. */
export interface OutageYear {
  year: number;
  minutesPerYear: number;
  timesPerYear: number;
  minutesPerYearOrdinary: number | null;
  timesPerYearOrdinary: number | null;
}

export interface StateOutageYear extends OutageYear {
  /** Two-letter postal code. */
  state: string;
}

/** Outages of the average US customer by year. EIA Electric Power Annual, Table 11.1. */
export const outagesNational: Table<OutageYear> = national;

/** Outages of the average customer of a state, 2023 and 2022. EIA Electric Power Annual, Table 11.3. */
export const outagesByState: Table<StateOutageYear> = states;

/** How often and how long, for one of the two sorts of outage. */
export interface OutageSort {
  timesPerYear: number;
  meanHours: number;
}

export interface TwoSorts {
  ordinary: OutageSort;
  major: OutageSort;
}

/**
 * The two sorts of outage pooled over years: times a year is the mean over years, mean hours the pooled
 * hours over the pooled times. Major is all less ordinary. Years without the split are left out; where
 * no year has it, `ordinary` stands in. `null` when there is nothing to pool.
 */
export function poolYears(years: readonly OutageYear[], ordinary?: OutageSort): TwoSorts | null {
  const split = years.filter((y) => y.timesPerYearOrdinary !== null);
  const used = split.length > 0 || ordinary === undefined ? split : years;
  if (used.length === 0) return null;
  const mean = (of: (year: OutageYear) => number) =>
    used.reduce((sum, year) => sum + of(year), 0) / used.length;
  const stand = ordinary ?? { timesPerYear: 0, meanHours: 0 };
  const times = mean((y) => y.timesPerYearOrdinary ?? stand.timesPerYear);
  const hours =
    mean((y) => y.minutesPerYearOrdinary ?? 60 * stand.timesPerYear * stand.meanHours) / 60;
  const majorTimes = Math.max(0, mean((y) => y.timesPerYear) - times);
  const majorHours = Math.max(0, mean((y) => y.minutesPerYear) / 60 - hours);
  return {
    ordinary: { timesPerYear: times, meanHours: times > 0 ? hours / times : 0 },
    major: {
      timesPerYear: majorTimes,
      meanHours: majorTimes > 0 ? majorHours / majorTimes : 0,
    },
  };
}

/** The nation's two sorts of outage, pooled over the years that have the split. */
export function nationalOutages(): TwoSorts {
  return poolYears(outagesNational.rows)!;
}

/** A state's two sorts of outage; `null` when the table has no row of it. */
export function stateOutages(state: string): TwoSorts | null {
  const rows = outagesByState.rows.filter((row) => row.state === state.toUpperCase());
  return poolYears(rows, nationalOutages().ordinary);
}
