import type { Highs } from 'highs';
import { cyclicOptimum } from '../../src/bill/dispatch/cyclic-optimum';
import { dayAheadRule } from '../../src/bill/dispatch/day-ahead-rule';
import type { DispatchProblem } from '../../src/bill/dispatch/dispatch-problem';
import { settingOfYear, type YearSetting } from '../../src/bill/dispatch/dispatch-year';
import { optimum } from '../../src/bill/dispatch/optimum';
import { peakOptimum } from '../../src/bill/dispatch/peak-optimum';
import { ruleShare } from '../../src/bill/dispatch/rule-share';
import { demoTariff } from '../../src/bill/tariff/demo-tariffs';
import { dispatchProgram, solveProgram } from '../fixtures/dispatch-program';
import { type DispatchRow, dispatchRows } from '../fixtures/dispatch-rows';
import { repeatDay } from '../fixtures/repeat-day';
import { sampleYear } from '../fixtures/sample-year';

const letters = ['A', 'B', 'C', 'D'] as const;

const inWindow = (h: number) => h % 24 >= 15 && h % 24 < 20;

/** A demo tariff on the sample year with a 10 kWh, 5 kW battery keeping 2 kWh for outages. */
export function demoSetting(letter: (typeof letters)[number], withSolar = true): YearSetting {
  const year = sampleYear(20261125);
  return settingOfYear({
    ...year,
    solarKwh: withSolar ? year.solarKwh : new Float64Array(8760),
    tariff: demoTariff(letter),
    battery: {
      usableKwh: 10,
      chargeKw: 5,
      dischargeKw: 5,
      chargeEfficiency: 0.95,
      dischargeEfficiency: 0.95,
    },
    floorKwhByMonth: Array(12).fill(2),
    exportAllowed: true,
    batteryMayExport: true,
    gridMayCharge: true,
  });
}

/** Lines that say how the battery optimum compares with a general solver, and the rule with the optimum. */
export async function benchDispatch(): Promise<string[]> {
  const { default: loadHighs } = await import('highs');
  const highs = await loadHighs();
  return [
    'Optimum of a year of hours, energy prices alone, against HiGHS in the same run:',
    ...letters.map((letter) => speedLine(highs, `tariff ${letter}`, demoSetting(letter).problem)),
    'Share of the optimum the rule keeps, one day repeated:',
    ...dispatchRows.map(rowLine),
    'Share of the optimum the rule keeps, a year of changing weather:',
    ...letters.flatMap((letter) => [
      yearLine(`tariff ${letter} with solar`, demoSetting(letter)),
      yearLine(`tariff ${letter} without solar`, demoSetting(letter, false)),
    ]),
  ];
}

function speedLine(highs: Highs, name: string, problem: DispatchProblem): string {
  const startKwh = problem.floorKwh[0]!;
  const program = dispatchProgram(highs, problem, { startKwh });
  // The first runs are spent compiling; both sides are measured warm, each by its middle run.
  for (let i = 0; i < 40; i++) optimum(problem, { startKwh });
  solveProgram(highs, program);
  const ours = Array.from({ length: 15 }, () => timed(() => optimum(problem, { startKwh })!));
  const theirs = Array.from({ length: 3 }, () => solveProgram(highs, program));
  const gap = Math.abs(ours[0]!.found.cost / theirs[0]!.cost - 1);
  const [fast, slow] = [middle(ours.map((o) => o.seconds)), middle(theirs.map((t) => t.seconds))];
  const ms = (seconds: number) => `${(seconds * 1000).toFixed(1)} ms`;
  return `  ${name}: ${(slow / fast).toFixed(0)} times faster (${ms(fast)} against ${ms(slow)}), cost differs by ${(100 * gap).toExponential(1)} %`;
}

/** What the rule saves on a repeated day over what the optimum saves; null where there is nothing to save. */
export function rowShare(row: DispatchRow): number | null {
  const { demand } = row;
  const run = repeatDay(row.problem, (long) => {
    if (!demand) return dayAheadRule(long);
    const hours = long.loadKwh.length;
    const perKw = Float64Array.from({ length: hours }, (_, h) => (inWindow(h) ? demand.perKw : 0));
    // A new month begins on day 10: in the first the peak was set before there was a past to learn from.
    const monthOf = Uint8Array.from({ length: hours }, (_, h) => (h < 240 ? 1 : 2));
    return dayAheadRule(long, { perKw, monthOf });
  });
  const day = run.dispatch.importKwh.subarray(run.from, run.from + 24);
  const peak = Math.max(...day.filter((_, h) => inWindow(h)));
  const cost = demand ? demand.days * run.cost + demand.perKw * peak : run.cost;
  const saving = row.noBattery - rowOptimum(row);
  return saving > 1e-6 ? (row.noBattery - cost) / saving : null;
}

/** The optimum of a row as we find it, demand charge and all. */
export function rowOptimum({ problem, demand }: DispatchRow): number {
  if (!demand) return cyclicOptimum(problem)!.cost;
  const counts = Float64Array.from({ length: 24 }, (_, h) => (inWindow(h) ? 1 : 0));
  return peakOptimum(problem, { perKw: demand.perKw, counts }, cyclicOptimum, demand.days)!.cost;
}

function rowLine(row: DispatchRow): string {
  const share = rowShare(row);
  if (share === null) return `  ${row.name}: nothing to save`;
  const why = share < 0.9 ? ': it guesses sun and load from the days before' : '';
  return `  ${row.name}: ${percent(share)}${why}`;
}

function yearLine(name: string, setting: YearSetting): string {
  const { savings, ceiling, share, short } = ruleShare(setting, 'peak-limit');
  if (share === null) return `  ${name}: nothing to save`;
  const money = `${savings.toFixed(0)} of ${ceiling.toFixed(0)} dollars a year`;
  return `  ${name}: ${percent(share)} (${money})${short === null ? '' : `: ${short}`}`;
}

function timed<T>(work: () => T): { found: T; seconds: number } {
  const before = performance.now();
  const found = work();
  return { found, seconds: (performance.now() - before) / 1000 };
}

const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
const middle = (list: number[]) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)]!;
