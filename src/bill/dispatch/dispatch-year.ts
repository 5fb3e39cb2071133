import type { BillDay } from '../tariff/bill-days';
import { billYear, type YearBill } from '../tariff/bill-year';
import type { PeakFactors } from '../tariff/peak-factors';
import { hourlyWorth, priceWorth } from '../tariff/price-worth';
import type { Tariff } from '../tariff/tariff';
import { type TariffHours, tariffHours } from '../tariff/tariff-hours';
import { addedAt, amountSteps } from './amount-steps';
import type { Battery } from './battery';
import { dayAheadRule } from './day-ahead-rule';
import type { Dispatch, DispatchProblem } from './dispatch-problem';
import { floorHours } from './floor-hours';
import { followCharge } from './follow-charge';
import { type HourRule, runRule } from './rule';
import { selfUseRule } from './self-use-rule';
import { timeRule } from './time-rule';

/** `both`: self-use and time shifting, a day ahead. `peak-limit`: the same and holding demand down. */
export type Strategy = 'self-use' | 'time-shift' | 'both' | 'peak-limit';

export interface DispatchYearInput {
  readonly tariff: Tariff;
  /** Usually `yearDays(year)`. */
  readonly days: readonly BillDay[];
  /** kWh an hour, 24 for each day. */
  readonly loadKwh: ArrayLike<number>;
  readonly solarKwh: ArrayLike<number>;
  readonly battery: Battery;
  /** Kept for outages, kWh, January to December. */
  readonly floorKwhByMonth: readonly number[];
  readonly exportAllowed: boolean;
  readonly batteryMayExport: boolean;
  readonly gridMayCharge: boolean;
  readonly peakFactors?: PeakFactors;
}

export interface YearSetting {
  readonly input: DispatchYearInput;
  readonly layout: TariffHours;
  readonly problem: DispatchProblem;
  /** The same house and sun with no battery. */
  readonly before: YearBill;
}

export interface DispatchYear {
  readonly dispatch: Dispatch;
  readonly bill: YearBill;
  /** $ a year off the bill, wear not taken off. */
  readonly savings: number;
  /** $ a year of wear. */
  readonly wear: number;
}

const layouts = new WeakMap<Tariff, { days: readonly BillDay[]; layout: TariffHours }>();

/** The last days a tariff was laid out on are kept: every route and every reserve is asked about on the same ones. */
function layoutOf(tariff: Tariff, days: readonly BillDay[]): TariffHours {
  const known = layouts.get(tariff);
  if (known?.days === days) return known.layout;
  const layout = tariffHours(tariff, days);
  layouts.set(tariff, { days, layout });
  return layout;
}

/** Lay out a year for a battery: prices by the hour, the floor, and the bill without a battery. */
export function settingOfYear(input: DispatchYearInput): YearSetting {
  const { tariff, days, loadKwh, solarKwh, battery } = input;
  const layout = layoutOf(tariff, days);
  const { exportAllowed, batteryMayExport, gridMayCharge } = input;
  const open = {
    battery,
    loadKwh,
    solarKwh,
    ...hourlyWorth(tariff, layout),
    exportAllowed: exportAllowed && tariff.export.rule !== 'none',
    batteryMayExport,
    gridMayCharge,
  };
  const { floorKwhByMonth } = input;
  const floorKwh = floorHours(open, { floorKwhByMonth, monthOf: layout.monthOf });
  const problem = { ...open, floorKwh };
  return { input, layout, problem, before: billOf({ input, layout }, idle(problem)) };
}

/** The same year with other charge kept for outages: prices and the bill without a battery do not depend on it. */
export function keptInstead(
  setting: YearSetting,
  floorKwhByMonth: DispatchYearInput['floorKwhByMonth'],
): YearSetting {
  const { layout, before } = setting;
  const { floorKwh: _, ...open } = setting.problem;
  const floorKwh = floorHours(open, { floorKwhByMonth, monthOf: layout.monthOf });
  const input = { ...setting.input, floorKwhByMonth };
  return { input, layout, problem: { ...open, floorKwh }, before };
}

/** The battery left alone all year. */
function idle(problem: DispatchProblem): Dispatch {
  return followCharge(problem, problem.floorKwh[0]!, () => 0);
}

/** A year of a battery run by a rule, with its bill and what it saves. */
export function dispatchYear(setting: YearSetting, strategy: Strategy): DispatchYear {
  const { problem } = setting;
  if (isAllKept(problem)) return outcome(setting, idle(problem));
  const priced = { ...problem, importPrice: marginalPrice(setting) };
  const dispatch = runRule(problem, ruleOf(priced, setting, strategy), problem.floorKwh[0]!);
  return outcome(setting, dispatch);
}

/** Nothing moves then, whatever the rule. */
function isAllKept({ floorKwh, battery, loadKwh }: DispatchProblem): boolean {
  for (let h = 0; h <= loadKwh.length; h++) if (floorKwh[h]! < battery.usableKwh) return false;
  return true;
}

/** What a dispatch does to the bill of a year. */
export function outcome(setting: YearSetting, dispatch: Dispatch): DispatchYear {
  const bill = billOf(setting, dispatch);
  const { wearPerKwh = 0 } = setting.problem.battery;
  const wear = wearPerKwh * dispatch.dischargeKwh.reduce((sum, kwh) => sum + kwh, 0);
  const kept = bill.carry.creditDollars - setting.before.carry.creditDollars;
  return { dispatch, bill, savings: setting.before.total - bill.total + kept, wear };
}

function ruleOf(
  problem: DispatchProblem,
  { input, layout }: YearSetting,
  strategy: Strategy,
): HourRule {
  if (strategy === 'self-use') return selfUseRule(problem);
  if (strategy === 'time-shift') return timeRule(problem);
  if (strategy === 'both' || layout.demandPrice.length === 0) return dayAheadRule(problem);
  const { demandFactor } = priceWorth(input.tariff);
  const perKw = Float64Array.from(
    { length: layout.hours },
    (_, h) =>
      demandFactor *
      layout.demandPrice.reduce(
        (sum, prices, i) => sum + prices[h]! * (input.peakFactors?.[i] ?? 1),
        0,
      ),
  );
  return dayAheadRule(problem, { perKw, monthOf: layout.monthOf });
}

/**
 * Price of the next kWh by the hour: the clock price and the tier or baseline step in which the mean day's import
 * without a battery lies, which a household reads off its bills.
 */
function marginalPrice({ input, layout, problem, before }: YearSetting): Float64Array {
  const days = input.days.length;
  const { energyFactor } = priceWorth(input.tariff);
  const kwh = before.importKwh / days;
  const added = input.tariff.seasons.map((season) => {
    const steps = amountSteps(input.tariff, { season, days: 30, monthDays: 30 });
    return energyFactor * addedAt(steps, kwh * 30);
  });
  return Float64Array.from(problem.importPrice, (price, h) => price + added[layout.seasonOf[h]!]!);
}

function billOf(
  { input, layout }: Pick<YearSetting, 'input' | 'layout'>,
  { importKwh, exportKwh }: Dispatch,
): YearBill {
  const { tariff, days, peakFactors } = input;
  return billYear({ tariff, days, importKwh, exportKwh, peakFactors, layout });
}
