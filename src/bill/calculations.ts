import type { Battery } from './battery';
import { monthDays, yearDays } from './bill-days';
import type { MonthBill } from './bill-month';
import { billYear } from './bill-year';
import { type CeilingYear, ceilingYear } from './ceiling-year';
import { type DispatchYear, dispatchYear, settingOfYear } from './dispatch-year';
import { type ReserveLevel, reserveCost } from './reserve-cost';
import type { Tariff } from './tariff';
import { usualDays } from './usual-day';

/** One month's bill for so many kWh, used in the shape of an ordinary home. */
export function billOfMonth(at: {
  tariff: Tariff;
  kwh: number;
  month: number;
  year: number;
}): MonthBill {
  const days = monthDays(at.year, at.month);
  const importKwh = usualDays({ kwhPerDay: at.kwh / days.length, days: days.length });
  const exportKwh = new Float64Array(importKwh.length);
  return billYear({ tariff: at.tariff, days, importKwh, exportKwh }).months[0]!;
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
export function dispatchOfYear(at: QuickBattery & { keptShare: number }): {
  rule: DispatchYear;
  ceiling: CeilingYear;
} {
  const floor = at.keptShare * at.usableKwh;
  const setting = settingOfYear({ ...quickHome(at), floorKwhByMonth: Array(12).fill(floor) });
  return { rule: dispatchYear(setting, 'peak-limit'), ceiling: ceilingYear(setting) };
}

/** What each share kept for outages costs a year in savings given up. */
export function reserveOfYear(at: QuickBattery & { keptShare: number }): ReserveLevel[] {
  return reserveCost(quickHome(at), { strategy: 'peak-limit', chosen: at.keptShare });
}

function quickHome(at: QuickBattery) {
  const days = yearDays(at.year);
  // Losses are taken as the same both ways.
  const oneWay = Math.sqrt(at.roundTripEfficiency);
  const battery: Battery = {
    usableKwh: at.usableKwh,
    chargeKw: at.kw,
    dischargeKw: at.kw,
    chargeEfficiency: oneWay,
    dischargeEfficiency: oneWay,
    wearPerKwh: at.wearPerKwh,
  };
  return {
    tariff: at.tariff,
    days,
    battery,
    loadKwh: usualDays({ kwhPerDay: at.kwhPerYear / days.length, days: days.length }),
    solarKwh: new Float64Array(days.length * 24),
    exportAllowed: false,
    batteryMayExport: false,
    gridMayCharge: true,
  };
}
