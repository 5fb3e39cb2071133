import type { Battery } from './dispatch/battery';
import { type CeilingYear, ceilingYear } from './dispatch/ceiling-year';
import { type DispatchYear, dispatchYear, settingOfYear } from './dispatch/dispatch-year';
import { type ReserveLevel, reserveCost } from './dispatch/reserve-cost';
import { type BillDay, yearDays } from './tariff/bill-days';
import { billMonth, type MonthBill } from './tariff/bill-month';
import { peakFactors } from './tariff/peak-factors';
import type { Tariff } from './tariff/tariff';
import { tariffHours } from './tariff/tariff-hours';
import { usualDays } from './tariff/usual-day';

/**
 * One bill over these days for so many kWh, used in the shape of an ordinary home; a bill that begins in one month and
 * ends in the next is one bill. `meteredKw`: the highest use of those days as read off the meter or the bill.
 */
export function billOfDays(given: {
  tariff: Tariff;
  kwh: number;
  days: readonly BillDay[];
  meteredKw: number | null;
}): MonthBill {
  const { tariff, kwh, days, meteredKw } = given;
  const importKwh = usualDays({ kwhPerDay: kwh / days.length, days: days.length });
  const hourKw = importKwh.reduce((most, each) => Math.max(most, each), 0);
  const hours = importKwh.length;
  return billMonth(tariff, {
    layout: tariffHours(tariff, days),
    from: 0,
    to: hours,
    importKwh,
    exportKwh: new Float64Array(hours),
    peakFactors: peakFactors(tariff, { hourKw, meteredKw, loads: [] }),
  });
}

/** A battery without solar in an ordinary home, for a first look. */
export interface QuickBattery {
  readonly tariff: Tariff;
  readonly kwhPerYear: number;
  readonly usableKwh: number;
  readonly kw: number;
  /** Share in to share out, 0 to 1. */
  readonly roundTripEfficiency: number;
  readonly wearPerKwh: number;
  readonly year: number;
}

/** What a battery saves on a year's bills with a share of it kept for outages: by the rule, and at the very most. */
export function dispatchOfYear(given: QuickBattery & { keptShare: number }): {
  rule: DispatchYear;
  ceiling: CeilingYear;
} {
  const floor = given.keptShare * given.usableKwh;
  const setting = settingOfYear({ ...quickHome(given), floorKwhByMonth: Array(12).fill(floor) });
  return { rule: dispatchYear(setting, 'peak-limit'), ceiling: ceilingYear(setting) };
}

/** What each share kept for outages costs a year in savings given up. */
export function reserveOfYear(at: QuickBattery & { keptShare: number }): ReserveLevel[] {
  return reserveCost(quickHome(at), { strategy: 'peak-limit', chosen: at.keptShare });
}

function quickHome(given: QuickBattery) {
  const days = yearDays(given.year);
  // Losses are taken as the same both ways.
  const oneWay = Math.sqrt(given.roundTripEfficiency);
  const battery: Battery = {
    usableKwh: given.usableKwh,
    chargeKw: given.kw,
    dischargeKw: given.kw,
    chargeEfficiency: oneWay,
    dischargeEfficiency: oneWay,
    wearPerKwh: given.wearPerKwh,
  };
  return {
    tariff: given.tariff,
    days,
    battery,
    loadKwh: usualDays({ kwhPerDay: given.kwhPerYear / days.length, days: days.length }),
    solarKwh: new Float64Array(days.length * 24),
    exportAllowed: false,
    batteryMayExport: false,
    gridMayCharge: true,
  };
}
