import { bestChange } from './best-change';
import type { DispatchProblem } from './dispatch-problem';
import { valueFunctions } from './optimum';
import { guessNeed, peakHold } from './peak-hold';
import { peakTarget } from './peak-target';
import type { HourRule } from './rule';
import { selfUseRule } from './self-use-rule';
import { emptyStage, fillStage } from './stage-cost';
import type { ValueStore } from './value-store';

const pastDays = 7;
const planHours = 48;

/** A demand charge as the rule meets it: $/kW of each hour that counts (0 where none does), and each hour's month. */
export interface DemandHours {
  readonly perKw: ArrayLike<number>;
  readonly monthOf: ArrayLike<number>;
}

/**
 * Self-use and time shifting together, and peak limiting where demand is charged, as a real controller could do it.
 * Each midnight it takes the mean load and sun of the last seven days as its guess for the next two, and works out
 * what a stored kWh will be worth in each hour to come; each hour it then weighs that worth against the price of the
 * moment, with the load and sun it measures. Before there is a past, it does solar self-use.
 */
export function dayAheadRule(problem: DispatchProblem, demand?: DemandHours): HourRule {
  const hours = problem.loadKwh.length;
  const { chargeEfficiency: ec, dischargeEfficiency: ed } = problem.battery;
  const stage = emptyStage();
  const simple = selfUseRule(problem);
  const limitKw = new Float64Array(hours).fill(Number.POSITIVE_INFINITY);
  let now = problem;
  let values: ValueStore | null = null;
  let from = 0;
  let peakKw = 0;
  let before = 0;
  let guess: Float64Array = new Float64Array(24);
  return (h, stored) => {
    if (demand && h > 0 && demand.perKw[h - 1]! > 0) {
      const moved = stored - before;
      const grid = problem.loadKwh[h - 1]! - problem.solarKwh[h - 1]!;
      peakKw = Math.max(peakKw, grid + (moved > 0 ? moved / ec : moved * ed));
    }
    if (demand && h > 0 && demand.monthOf[h] !== demand.monthOf[h - 1]) peakKw = 0;
    before = stored;
    if (h % 24 === 0) {
      from = h;
      if (demand) {
        now = withLimit({ problem, demand, limitKw, h, peakKw });
        guess = guessNeed(problem, demand.perKw, { h, pastDays });
      }
      values = h === 0 ? null : planFrom(now, h, values);
    }
    if (values === null) return simple(h, stored);
    fillStage(stage, now, h);
    const change = bestChange(stage, values, h - from + 1, stored);
    const wish = change > 0 ? change / ec : change * ed;
    if (!demand) return wish;
    const hold = peakHold(problem, demand.perKw, { h, stored, peakKw, guess });
    return Math.min(Math.max(wish, hold.min), hold.max);
  };
}

function withLimit(given: {
  problem: DispatchProblem;
  demand: DemandHours;
  limitKw: Float64Array;
  h: number;
  peakKw: number;
}): DispatchProblem {
  const { problem, demand, limitKw, h } = given;
  const target = Math.max(given.peakKw, peakTarget(problem, demand.perKw, { h, pastDays }));
  let perKwh = 0;
  for (let i = h; i < Math.min(h + planHours, limitKw.length); i++) {
    limitKw[i] = demand.perKw[i]! > 0 ? target : Number.POSITIVE_INFINITY;
    perKwh = Math.max(perKwh, demand.perKw[i]!);
  }
  return { ...problem, peak: { kw: limitKw, perKwh } };
}

/** @param past the plan of the day before, which is over */
function planFrom(problem: DispatchProblem, h: number, past: ValueStore | null): ValueStore | null {
  const end = Math.min(h + planHours, problem.loadKwh.length);
  const days = Math.min(pastDays, Math.floor(h / 24));
  const slice = (list: ArrayLike<number>, to = end) => {
    const out = new Float64Array(to - h);
    for (let i = h; i < to; i++) out[i - h] = list[i]!;
    return out;
  };
  const guess = (list: ArrayLike<number>) => {
    const day = new Float64Array(24);
    for (let i = h - 24 * days; i < h; i++) day[i % 24] = day[i % 24]! + list[i]! / days;
    const ahead = new Float64Array(end - h);
    for (let i = 0; i < ahead.length; i++) ahead[i] = day[i % 24]!;
    return ahead;
  };
  const guessed = {
    ...problem,
    loadKwh: guess(problem.loadKwh),
    solarKwh: guess(problem.solarKwh),
    importPrice: slice(problem.importPrice),
    exportPrice: slice(problem.exportPrice),
    floorKwh: slice(problem.floorKwh, end + 1),
    ...(problem.peak && { peak: { ...problem.peak, kw: slice(problem.peak.kw) } }),
  };
  return valueFunctions(guessed, undefined, past);
}
