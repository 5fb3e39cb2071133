import national from '#compiled/tables/eia-outages-national.js';
import states from '#compiled/tables/eia-outages-states.js';
import { stateName } from './place/state-name';
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
  /** `any`: all utilities that report; `ieee`: those that report by IEEE 1366. */
  method: 'any' | 'ieee';
  /** Minutes an interruption as printed: minutes a year over times a year, to check a row by. */
  minutesEach: number;
  minutesEachOrdinary: number | null;
}

/** Outages of the average US customer by year. EIA Electric Power Annual, Table 11.1. */
export const outagesNational: Table<OutageYear> = national;

/** Outages of the average customer of a state, 2014 to 2023. EIA Electric Power Annual, chapter 11. */
export const outagesByState: Table<StateOutageYear> = states;

/** How often and how long, for one of the two sorts of outage. */
export interface MeanOutage {
  timesPerYear: number;
  meanHours: number;
}

export interface OrdinaryAndMajor {
  ordinary: MeanOutage;
  major: MeanOutage;
}

/**
 * The two sorts of outage pooled over years: times a year is the mean over years, mean hours the pooled
 * hours over the pooled times. Major is all less ordinary. Years without the split are left out; where
 * no year has it, times and hours are split in the proportions of `like`. `null`: nothing to pool.
 */
export function poolYears(
  years: readonly OutageYear[],
  like?: OrdinaryAndMajor,
): OrdinaryAndMajor | null {
  const split = splitYears(years);
  const used = split.length > 0 || like === undefined ? split : years;
  if (used.length === 0) return null;
  const mean = (of: (year: OutageYear) => number) =>
    used.reduce((sum, year) => sum + of(year), 0) / used.length;
  const all = { times: mean((y) => y.timesPerYear), hours: mean((y) => y.minutesPerYear) / 60 };
  const share = like && ordinaryShares(like);
  const times = mean((y) => y.timesPerYearOrdinary ?? share!.times * y.timesPerYear);
  const hours = mean((y) => y.minutesPerYearOrdinary ?? share!.hours * y.minutesPerYear) / 60;
  return {
    ordinary: meanOutage(times, hours),
    major: meanOutage(Math.max(0, all.times - times), Math.max(0, all.hours - hours)),
  };
}

const splitYears = <Year extends OutageYear>(years: readonly Year[]): Year[] =>
  years.filter((y) => y.timesPerYearOrdinary !== null);

function meanOutage(timesPerYear: number, hoursPerYear: number): MeanOutage {
  return { timesPerYear, meanHours: timesPerYear > 0 ? hoursPerYear / timesPerYear : 0 };
}

/** Shares of the times and of the hours that are ordinary. */
function ordinaryShares({ ordinary, major }: OrdinaryAndMajor): { times: number; hours: number } {
  const hours = (outages: MeanOutage) => outages.timesPerYear * outages.meanHours;
  return {
    times: ordinary.timesPerYear / (ordinary.timesPerYear + major.timesPerYear),
    hours: hours(ordinary) / (hours(ordinary) + hours(major)),
  };
}

/** The nation's two sorts of outage, pooled over the years that have the split. */
export function nationalOutages(): OrdinaryAndMajor {
  return poolYears(outagesNational.rows)!;
}

/** A state's two sorts of outage, split like the nation's where it has no split; `null` when it has no row. */
export function stateOutages(state: string): OrdinaryAndMajor | null {
  const rows = outagesByState.rows.filter((row) => row.state === state.toUpperCase());
  return poolYears(rows, nationalOutages());
}

/** Years of a table that are pooled. */
export interface PooledYears {
  readonly count: number;
  readonly first: number;
  readonly last: number;
}

/** Whose record of outages stands for a home, and of which years. */
export interface OutageRecord {
  /** Null: the nation's alone. */
  readonly state: string | null;
  /** Null where our table has no figures of the state. */
  readonly own: PooledYears | null;
  readonly nation: PooledYears;
}

/** The record that stands for a home in this state; `null`: no state is known. */
export function outageRecord(state: string | null): OutageRecord {
  const code = state?.toUpperCase() ?? null;
  const own = outagesByState.rows.filter((row) => row.state === code);
  return {
    state: code === null ? null : stateName(code),
    own: own.length > 0 ? pooled(own) : null,
    nation: pooled(outagesNational.rows),
  };
}

function pooled(rows: readonly OutageYear[]): PooledYears {
  const years = splitYears(rows).map(({ year }) => year);
  return { count: years.length, first: Math.min(...years), last: Math.max(...years) };
}
