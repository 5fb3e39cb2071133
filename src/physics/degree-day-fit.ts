/** One month of a meter, and what the weather asked in it. */
export interface MeteredMonth {
  readonly days: number;
  readonly kwhPerDay: number;
  /** Mean heating and cooling degrees of its days, K; at least 0. */
  readonly heatingK: number;
  readonly coolingK: number;
}

/** What a year of months splits into. */
export interface DegreeDayFit {
  /** Used whatever the weather, kWh a day. */
  readonly baseKwhPerDay: number;
  /** kWh for each heating and each cooling degree day, kWh/(K day). */
  readonly kwhPerHeatingK: number;
  readonly kwhPerCoolingK: number;
  /** Root of the mean squared misfit, n less the parameters used, over the mean use; 0 is perfect. */
  readonly cvRmse: number;
  /** Share of the scatter of the months that the fit explains, at most 1. */
  readonly r2: number;
}

type Row = readonly [base: number, heating: number, cooling: number];
type Coefficients = [number, number, number];

/** Each way of leaving out some of base, heating and cooling. */
const SUBSETS = [7, 3, 5, 6, 1, 2, 4].map((bits) => [0, 1, 2].filter((i) => bits & (1 << i)));

/**
 * Least squares of daily use on degree days, no part below zero:
 *
 *   kWh a day = base + h x heating degrees + c x cooling degrees,   base, h, c >= 0
 *
 * The best fit with no part below zero is the ordinary one with some parts left out: all seven are tried. Months weigh as
 * their days. Null with fewer than six months or no use at all. Sources: Fels 1986, PRISM: an introduction, Energy and
 * Buildings 9, 5-18 (there the base temperature is fitted too; here it is given); ASHRAE Guideline 14-2014 for CV(RMSE).
 */
export function degreeDayFit(months: readonly MeteredMonth[]): DegreeDayFit | null {
  const mean = weighted(months, (month) => month.kwhPerDay) / weighted(months, () => 1);
  if (months.length < 6 || !(mean > 0)) return null;
  const rows = months.map((m): Row => [1, m.heatingK, m.coolingK]);
  let best: { of: Coefficients; misfit: number; parts: number } | null = null;
  for (const parts of SUBSETS) {
    const of = leastSquares(months, rows, parts);
    if (of === null || of.some((one) => one < 0)) continue;
    const misfit = weighted(months, (m, i) => (m.kwhPerDay - at(of, rows[i]!)) ** 2);
    if (best === null || misfit < best.misfit * (1 - 1e-12))
      best = { of, misfit, parts: parts.length };
  }
  if (best === null) return null;
  const [baseKwhPerDay, kwhPerHeatingK, kwhPerCoolingK] = best.of;
  const squares = months.reduce((sum, m, i) => sum + (m.kwhPerDay - at(best.of, rows[i]!)) ** 2, 0);
  const cvRmse = Math.sqrt(squares / (months.length - best.parts)) / mean;
  const scatter = weighted(months, (m) => (m.kwhPerDay - mean) ** 2);
  const r2 = scatter > 0 ? 1 - best.misfit / scatter : 0;
  return { baseKwhPerDay, kwhPerHeatingK, kwhPerCoolingK, cvRmse, r2 };
}

const at = (coefficients: Coefficients, row: Row) =>
  coefficients[0] * row[0] + coefficients[1] * row[1] + coefficients[2] * row[2];

function weighted(
  months: readonly MeteredMonth[],
  of: (month: MeteredMonth, i: number) => number,
): number {
  return months.reduce((sum, month, i) => sum + month.days * of(month, i), 0);
}

/** Coefficients of these parts, the others 0; null where the months cannot tell the parts from each other. */
function leastSquares(
  months: readonly MeteredMonth[],
  rows: readonly Row[],
  parts: readonly number[],
): Coefficients | null {
  // Each part over its largest value, so that a near-zero pivot means the same for all.
  const size = parts.map((p) => Math.max(...rows.map((row) => row[p]!)));
  if (size.some((one) => one <= 0)) return null;
  const x = (i: number, p: number) => rows[i]![parts[p]!]! / size[p]!;
  const normal = parts.map((_, p) => [
    ...parts.map((_, q) => weighted(months, (_, i) => x(i, p) * x(i, q))),
    weighted(months, (month, i) => x(i, p) * month.kwhPerDay),
  ]);
  const solved = solve(normal);
  if (solved === null) return null;
  const of: Coefficients = [0, 0, 0];
  for (const [p, part] of parts.entries()) of[part] = solved[p]! / size[p]!;
  return of;
}

/** Gauss elimination of a symmetric system, right side in the last column; null where it is singular. */
function solve(system: number[][]): number[] | null {
  const n = system.length;
  for (let p = 0; p < n; p++) {
    const pivot = system[p]![p]!;
    if (!(pivot > 1e-9 * system[0]![0]!)) return null;
    for (let r = 0; r < n; r++) {
      if (r === p) continue;
      const share = system[r]![p]! / pivot;
      for (let c = p; c <= n; c++) system[r]![c]! -= share * system[p]![c]!;
    }
  }
  return system.map((row, p) => row[n]! / row[p]!);
}
