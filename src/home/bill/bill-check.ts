import type { Figure } from '../../quantity/figure';
import { addFigures, formula, timesFigure } from '../../quantity/figure-arithmetic';
import type { Climate } from '../../tables/place/climate';
import type { Facts } from '../facts';
import { type BillCheck, type Load, type Season, seasons } from '../home';
import { type ClimateHours, usualShareOf } from '../weather/climate-hours';
import type { BillYear } from './bill-year';
import { billFigure, billMonths, seasonBill } from './season-bill';

/** Days in the month of a bill, as far as a yearly mean goes: 365 / 12. */
const DAYS = 365 / 12;
/** The likely sum may be this much over the bill before we ask. */
const LIKELY_LIMIT = 1.15;

/** What the loads are held against the bill with. */
export interface BillCheckOf {
  readonly facts: Facts;
  readonly loads: readonly Load[];
  readonly climate: Climate;
  readonly hours: ClimateHours;
  /** The twelve bills, where they were told. */
  readonly billYear: BillYear | null;
}

/**
 * Hold the loads against the bill of the same season, solar that was used at home added back; of twelve bills, against
 * the season that fits worst. Nothing is scaled: when they do not agree, both are shown and the household decides which
 * is wrong.
 */
export function checkBill(given: BillCheckOf): BillCheck {
  const { billYear } = given;
  if (billYear !== null) {
    const checks = seasons.map((season) =>
      against(given, season, seasonBill(billYear, given.climate, season)),
    );
    return checks.reduce((a, b) => (overBill(b) > overBill(a) ? b : a));
  }
  const { facts } = given;
  const kwh = facts.told('bill-kwh') ? facts.number('bill-kwh') : null;
  if (kwh === null) return no('no-bill');
  const solar = solarUsed(facts);
  if (solar === null) {
    return no('own-solar-not-known');
  }
  const is = { code: 'one-bill', kwh, solarKwh: solar, days: DAYS } as const;
  return against(given, seasonOf(facts), billFigure((kwh + solar) / DAYS, is));
}

type Held = Exclude<BillCheck, { verdict: 'not-possible' }>;

/** The loads of an average day of the season held against the bill of that season. */
function against(
  { loads, hours, billYear, climate }: BillCheckOf,
  season: Season,
  billKwhPerDay: Figure,
): Held {
  const loadsKwhPerDay = addFigures(
    loads.map((load) => usualDay(load, season, hours)),
    {
      unit: 'kWh/day',
      name: { code: 'usual-day', season },
      source: formula('sum-of-usual-day'),
    },
  );
  const months = billYear === null ? null : billMonths(climate, season);
  const code = judge(billKwhPerDay, loadsKwhPerDay);
  const verdict = code === 'bill-above-loads' ? 'fits' : code;
  return { verdict, code, months, billKwhPerDay, loadsKwhPerDay, season };
}

/** How far the loads are over the bill; a month without use is the worst of all. */
function overBill({ billKwhPerDay: bill, loadsKwhPerDay: loads }: Held): number {
  return bill.value > 0 ? loads.value / bill.value : Number.POSITIVE_INFINITY;
}

function judge(bill: Figure, loads: Figure): Held['code'] {
  if (loads.low > bill.value) return 'loads-over-bill';
  if (loads.value > LIKELY_LIMIT * bill.value) return 'loads-likely-high';
  return bill.value > loads.high ? 'bill-above-loads' : 'fits';
}

/** Heating and cooling of an average day: the hard day of the plan times the climate's share. */
function usualDay(load: Load, season: Season, hours: ClimateHours): Figure {
  const share = usualShareOf(load, season, hours);
  return share === 1 ? load.kwhPerDay[season] : timesFigure(load.kwhPerDay[season], share);
}

function solarUsed(facts: Facts): number | null {
  if (facts.value('own-sources') === null) return null;
  if (!facts.has('own-sources', 'solar')) return 0;
  return facts.told('bill-solar-kwh') ? facts.number('bill-solar-kwh') : null;
}

function seasonOf(facts: Facts): Season {
  const season = facts.value('bill-season');
  return season === 'winter' || season === 'summer' ? season : 'mild';
}

const no = (because: Extract<BillCheck, { verdict: 'not-possible' }>['because']): BillCheck => ({
  verdict: 'not-possible',
  because,
});
