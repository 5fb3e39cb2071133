import type { Battery } from '../../bill/dispatch/battery';
import { ceilingYear, type NotExact } from '../../bill/dispatch/ceiling-year';
import {
  type DispatchYearInput,
  dispatchYear,
  type Strategy,
  settingOfYear,
  type YearSetting,
} from '../../bill/dispatch/dispatch-year';
import { WEAR_PER_KWH } from '../../bill/lifecycle/battery-wear';
import { billYear, type YearBill } from '../../bill/tariff/bill-year';
import type { Home } from '../../home/home';
import { ownSolarKw } from '../../home/solar/own-solar';
import { limitsOf } from '../../routes/battery-hours';
import type { Route } from '../../routes/route';
import { batteryType } from '../../tables/battery-types';
import type { HouseYear } from './house-year';
import { peakFactorsOf } from './peak-factors-of';
import type { HomeTariff } from './tariff-of';

/** What a route with a battery or solar does to the bill of an ordinary year. */
export interface BetweenOutages {
  /** `wait`: one price and no sun, so there is nothing to do. */
  readonly strategy: Strategy | 'wait';
  /** False where the rule would cost more in wear than it takes off, so the battery stays full and waits. */
  readonly worthRunning: boolean;
  /** Kept for outages, kWh, January to December. */
  readonly keptKwh: readonly number[];
  /** $ a year off the bill, wear not taken off. */
  readonly savings: number;
  /** The part of it that solar alone would save. */
  readonly solarSavings: number;
  /** The most any schedule could save after wear, $ a year; null when left out. */
  readonly ceiling: number | null;
  /** Why it was left out, or why it is not exact. */
  readonly ceilingNote: CeilingNote | null;
  readonly wear: number;
  readonly before: YearBill;
  readonly after: YearBill;
  /** The input of the rule, for asking what other reserves would save; null without a battery that works. */
  readonly input: DispatchYearInput | null;
}

export type CeilingNote =
  | {
      readonly code:
        | 'nothing-to-earn' // one price at all hours, and no solar
        | 'one-route-only' // worked out for one battery route
        | 'demand-charge'; // takes long to work out
    }
  | { readonly code: 'not-exact'; readonly why: NotExact };

/** The battery of a route as the bill sees it. */
export function billBattery(route: Route): Battery {
  const kw = (route.power?.continuousWatts ?? 0) / 1000;
  const { chargePerHour } = batteryType('lithium-iron-phosphate');
  const { chargeEfficiency, dischargeEfficiency } = limitsOf(kw);
  const nameplate = route.nameplateKwh ?? 0;
  return {
    usableKwh: route.usableKwh ?? 0,
    chargeKw: Math.min(kw, chargePerHour * nameplate),
    dischargeKw: kw,
    chargeEfficiency,
    dischargeEfficiency,
    wearPerKwh: WEAR_PER_KWH,
  };
}

export interface BetweenInput {
  readonly home: Home;
  readonly route: Route;
  readonly of: HomeTariff;
  readonly year: HouseYear;
  readonly keptKwh: readonly number[];
}

/** A year of the route against a year without it: solar that is there already is in both. */
export function betweenOutages(input: BetweenInput): BetweenOutages {
  const { home, route, of, year, keptKwh } = input;
  const { tariff } = of;
  const { days, loadKwh, sunKwhPerKw } = year;
  const own = ownSolarKw(home.facts);
  const solarKw = Math.max(own, route.solarKw ?? 0);
  const sun = (kw: number) =>
    Float64Array.from({ length: loadKwh.length }, (_, h) => kw * (sunKwhPerKw?.[h] ?? 0));
  const solarKwh = sun(solarKw);
  const { facts } = home;
  const asked: DispatchYearInput = {
    tariff,
    days,
    loadKwh,
    solarKwh,
    battery: billBattery(route),
    floorKwhByMonth: keptKwh,
    exportAllowed: tariff.export.rule !== 'none',
    batteryMayExport: facts.is('battery-export', 'yes'),
    gridMayCharge: gridMayCharge(home, solarKw > 0),
    peakFactors: peakFactorsOf(home, tariff, year),
  };
  const setting = settingOfYear(asked);
  const before = solarKw > own ? billOf(setting, sun(own)) : setting.before;
  const solarSavings = before.total - setting.before.total;
  const strategy = strategyOf(setting, solarKw > 0);
  if (strategy === 'wait') {
    const ceilingNote = { code: 'nothing-to-earn' } as const;
    const none = {
      worthRunning: false,
      savings: solarSavings,
      ceiling: null,
      ceilingNote,
      wear: 0,
    };
    return { ...none, strategy, keptKwh, solarSavings, before, after: setting.before, input: null };
  }
  const ruled = dispatchYear(setting, strategy);
  // A rule that costs money is one nobody would switch on.
  const useful = ruled.savings - ruled.wear > 0;
  const shown = useful ? ruled : { savings: 0, wear: 0, bill: setting.before };
  return {
    strategy,
    worthRunning: useful,
    keptKwh,
    solarSavings,
    savings: solarSavings + shown.savings,
    wear: shown.wear,
    before,
    after: shown.bill,
    input: asked,
    ceiling: null,
    ceilingNote: { code: 'one-route-only' },
  };
}

/** The same with the most that any schedule could save, where that can be worked out quickly. */
export function withCeiling(between: BetweenOutages): BetweenOutages {
  const { input, solarSavings } = between;
  if (input === null || !between.worthRunning) return between;
  const setting = settingOfYear(input);
  if (setting.layout.demandPrice.length > 0) {
    return { ...between, ceiling: null, ceilingNote: { code: 'demand-charge' } };
  }
  const { savings, wear, notExact } = ceilingYear(setting);
  const ceilingNote = notExact === null ? null : ({ code: 'not-exact', why: notExact } as const);
  return { ...between, ceiling: solarSavings + savings - wear, ceilingNote };
}

/** Charging from the grid: as told; without solar there is nothing else to charge from, and no solar rule against it. */
function gridMayCharge({ facts }: Home, solar: boolean): boolean {
  if (facts.told('grid-charge')) return facts.is('grid-charge', 'yes');
  return !solar;
}

function strategyOf({ layout, input }: YearSetting, solar: boolean): Strategy | 'wait' {
  if (layout.demandPrice.length > 0) return 'peak-limit';
  const clocked = input.tariff.seasons.some(
    ({ periods }) => new Set(periods.map((period) => period.price)).size > 1,
  );
  if (solar) return clocked ? 'both' : 'self-use';
  return clocked ? 'time-shift' : 'wait';
}

function billOf({ input, layout }: YearSetting, solarKwh: Float64Array): YearBill {
  const { tariff, days, loadKwh, exportAllowed, peakFactors } = input;
  const net = Float64Array.from({ length: layout.hours }, (_, h) => loadKwh[h]! - solarKwh[h]!);
  const importKwh = net.map((kwh) => Math.max(0, kwh));
  const exportKwh = net.map((kwh) => (exportAllowed ? Math.max(0, -kwh) : 0));
  return billYear({ tariff, days, importKwh, exportKwh, peakFactors, layout });
}
