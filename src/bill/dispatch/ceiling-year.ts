import { priceWorth } from '../tariff/price-worth';
import { amountOptimum } from './amount-optimum';
import { amountSteps } from './amount-steps';
import type { Dispatch, DispatchProblem } from './dispatch-problem';
import { type DispatchYear, outcome, type YearSetting } from './dispatch-year';
import { followCharge } from './follow-charge';
import { type Ends, optimum } from './optimum';
import { peakOptimum } from './peak-optimum';

export interface CeilingYear extends DispatchYear {
  /** Null when no schedule beats this one; else why a better one may exist. */
  readonly notExact: NotExact | null;
}

/** Why a better schedule than the best one found may exist. */
export type NotExact =
  | 'price-falls-with-use'
  | 'first-demand-charge-only'
  | 'peaks-of-later-months' // what a peak costs in them is left out
  | 'export-by-its-hour'
  | 'least-bill';

/**
 * The most a battery could save on a year's bills if every hour were known beforehand: a ceiling, not a promise.
 * Where prices depend on the clock alone the whole year is one problem. Where a month's amount or peak is priced,
 * each bill is its own problem, from floor to floor, which no battery of a day or two can do much better than.
 */
export function ceilingYear(setting: YearSetting): CeilingYear {
  const { problem, input, layout } = setting;
  const { tariff } = input;
  const byAmount = tariff.seasons.some((s) => s.tiers !== undefined) || tariff.baselineCredit;
  if (layout.demandPrice.length === 0 && !byAmount) {
    const whole = optimum(problem, { startKwh: problem.floorKwh[0]! })!;
    return exactly(setting, outcome(setting, whole), true);
  }
  let exact = true;
  const stored = new Float64Array(problem.loadKwh.length + 1);
  for (const span of billParts(setting)) {
    const part = slicePart(problem, span);
    const ends = {
      startKwh: chargeBetween(problem, span.from),
      endKwh: chargeBetween(problem, span.to),
    };
    const found = partOptimum(setting, part, { ...span, ends });
    exact &&= found.exact;
    stored.set(found.dispatch.storedKwh, span.from);
  }
  const joined = followCharge(problem, stored[0]!, (h) => stored[h + 1]! - stored[h]!);
  return exactly(setting, outcome(setting, joined), exact);
}

/**
 * Charge at the turn from one bill to the next, kWh: the floor, and where that falls at the turn, what it was an hour
 * before, for no battery is emptied at once.
 */
function chargeBetween({ floorKwh }: DispatchProblem, h: number): number {
  return Math.max(floorKwh[Math.max(0, h - 1)]!, floorKwh[h]!);
}

function exactly(setting: YearSetting, found: DispatchYear, exact: boolean): CeilingYear {
  return { ...found, notExact: whyNot(setting, found, exact) };
}

interface Span {
  from: number;
  to: number;
  /** Days of the calendar month this part belongs to. */
  monthDays: number;
}

/** Runs of hours in one month and one season. */
function billParts({ layout }: YearSetting): Span[] {
  const spans: Span[] = [];
  const monthHours = new Map<number, number>();
  for (const month of layout.monthOf) monthHours.set(month, (monthHours.get(month) ?? 0) + 1);
  let from = 0;
  for (let h = 1; h <= layout.hours; h++) {
    const same =
      h < layout.hours &&
      layout.monthOf[h] === layout.monthOf[from] &&
      layout.seasonOf[h] === layout.seasonOf[from];
    if (same) continue;
    spans.push({ from, to: h, monthDays: monthHours.get(layout.monthOf[from]!)! / 24 });
    from = h;
  }
  return spans;
}

function partOptimum(
  { input, layout }: YearSetting,
  part: DispatchProblem,
  span: Span & { readonly ends: Ends },
): { dispatch: Dispatch; exact: boolean } {
  const season = input.tariff.seasons[layout.seasonOf[span.from]!]!;
  const days = (span.to - span.from) / 24;
  const { energyFactor, demandFactor } = priceWorth(input.tariff);
  const steps = amountSteps(input.tariff, { season, days, monthDays: span.monthDays }).map(
    ({ toKwh, added }) => ({ toKwh, added: energyFactor * added }),
  );
  const energy = (problem: DispatchProblem) => optimum(problem, span.ends);
  let exact = true;
  const byAmount = (problem: DispatchProblem): Dispatch | null => {
    if (steps.length === 1 && steps[0]!.added === 0) return energy(problem);
    const found = amountOptimum(problem, steps, energy);
    if (found === null) return null;
    exact &&= found.exact;
    return { ...found.dispatch, cost: found.cost };
  };
  const counts = layout.demandPrice[0]?.subarray(span.from, span.to);
  const perKw = demandFactor * (counts ? Math.max(0, ...counts) : 0);
  const dispatch =
    perKw > 0 ? peakOptimum(part, { perKw, counts: counts! }, byAmount)!.dispatch : byAmount(part)!;
  return { dispatch, exact };
}

function slicePart(problem: DispatchProblem, { from, to }: Span): DispatchProblem {
  const slice = (list: ArrayLike<number>, end = to) =>
    Float64Array.from({ length: end - from }, (_, i) => list[from + i]!);
  return {
    ...problem,
    loadKwh: slice(problem.loadKwh),
    solarKwh: slice(problem.solarKwh),
    importPrice: slice(problem.importPrice),
    exportPrice: slice(problem.exportPrice),
    floorKwh: slice(problem.floorKwh, to + 1),
  };
}

function whyNot({ input }: YearSetting, { bill }: DispatchYear, exact: boolean): NotExact | null {
  const { tariff } = input;
  if (!exact) return 'price-falls-with-use';
  if ((tariff.demand?.length ?? 0) > 1) return 'first-demand-charge-only';
  if (tariff.demand?.some((d) => d.ratchet)) return 'peaks-of-later-months';
  if (tariff.export.rule === 'net-metering') return 'export-by-its-hour';
  if (bill.months.some((month) => month.lines.some(({ kind }) => kind === 'minimum')))
    return 'least-bill';
  return null;
}
