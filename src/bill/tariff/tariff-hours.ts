import type { BillDay } from './bill-days';
import { inHours, inSeason, onDay, periodsAt } from './clock-hours';
import type { Tariff, TariffSeason } from './tariff';
import { holidaysOf } from './us-holidays';

/** A tariff laid out on the hours of some days: which price holds when. */
export interface TariffHours {
  readonly hours: number;
  /** Index into `tariff.seasons` of each hour, and index into that season's periods. */
  readonly seasonOf: Uint8Array;
  readonly periodOf: Uint8Array;
  /** $/kWh by the clock; tiers and baseline are left out, they depend on the month's total. */
  readonly importPrice: Float64Array;
  /** $/kWh paid for export; under net metering, the price of the same hour; 0 with no export credit. */
  readonly exportPrice: Float64Array;
  /** For each demand charge, $/kW where an hour counts and 0 where it does not. */
  readonly demandPrice: readonly Float64Array[];
  /** Calendar month of each hour, 1 to 12. */
  readonly monthOf: Uint8Array;
}

/**
 * Lay a tariff out hour by hour over days. Throws RangeError when no season or period covers an hour: run
 * `checkTariff` first.
 */
export function tariffHours(tariff: Tariff, days: readonly BillDay[]): TariffHours {
  const hours = days.length * 24;
  const out: TariffHours = {
    hours,
    seasonOf: new Uint8Array(hours),
    periodOf: new Uint8Array(hours),
    importPrice: new Float64Array(hours),
    exportPrice: new Float64Array(hours),
    demandPrice: (tariff.demand ?? []).map(() => new Float64Array(hours)),
    monthOf: new Uint8Array(hours),
  };
  const clocks = new Map<TariffSeason, Uint8Array>();
  const holidays = new Map<number, ReadonlySet<number>>();
  days.forEach((day, d) => {
    if (!holidays.has(day.year)) {
      holidays.set(day.year, holidaysOf(tariff.holidays ?? [], day.year));
    }
    const holiday = holidays.get(day.year)!.has(day.month * 100 + day.dayOfMonth);
    const weekend = holiday || day.weekday === 0 || day.weekday === 6;
    fillDay(out, { tariff, day, at: d * 24, weekend, clocks });
  });
  return out;
}

interface DayTask {
  tariff: Tariff;
  day: BillDay;
  at: number;
  weekend: boolean;
  clocks: Map<TariffSeason, Uint8Array>;
}

function fillDay(out: TariffHours, task: DayTask): void {
  const { tariff, day, at, weekend, clocks } = task;
  const s = seasonIndex(tariff.seasons, day);
  const season = tariff.seasons[s]!;
  const clock = clockOf(season, clocks);
  const rule = tariff.export;
  const sold = rule.rule === 'net-billing' ? rule.seasons[seasonIndex(rule.seasons, day)]! : null;
  const soldClock = sold ? clockOf(sold, clocks) : null;
  for (let hour = 0; hour < 24; hour++) {
    const h = at + hour;
    const slot = (weekend ? 24 : 0) + hour;
    out.monthOf[h] = day.month;
    out.seasonOf[h] = s;
    out.periodOf[h] = clock[slot]!;
    out.importPrice[h] = season.periods[clock[slot]!]!.price;
    if (sold) out.exportPrice[h] = sold.periods[soldClock![slot]!]!.price;
    if (rule.rule === 'net-metering') out.exportPrice[h] = out.importPrice[h]!;
    if (rule.rule === 'hourly-credit') out.exportPrice[h] = rule.prices[day.month - 1]![hour]!;
    (tariff.demand ?? []).forEach((charge, i) => {
      if (!onDay(weekend, charge.days) || !inHours(hour, charge.hours)) return;
      out.demandPrice[i]![h] = charge.prices.find((p) => inSeason(day, p))?.perKw ?? 0;
    });
  }
}

function seasonIndex(seasons: readonly TariffSeason[], day: BillDay): number {
  const index = seasons.findIndex((s) => inSeason(day, s));
  if (index < 0) throw new RangeError(`no season covers ${day.month}/${day.dayOfMonth}`);
  return index;
}

/** Period of every hour of a weekday (0 to 23) and of a weekend day (24 to 47). */
function clockOf(season: TariffSeason, clocks: Map<TariffSeason, Uint8Array>): Uint8Array {
  const known = clocks.get(season);
  if (known) return known;
  const clock = Uint8Array.from({ length: 48 }, (_, slot) => {
    const found = periodsAt(season.periods, { weekend: slot >= 24, hour: slot % 24 });
    if (found.length === 0)
      throw new RangeError(`the season from ${season.from} has no price at ${slot % 24}:00`);
    return found[0]!;
  });
  clocks.set(season, clock);
  return clock;
}
