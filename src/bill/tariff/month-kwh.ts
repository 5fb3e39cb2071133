import type { TariffHours } from './tariff-hours';

/** What went through the meter in one period of one season of a billing month. */
export interface PeriodKwh {
  readonly season: number;
  readonly period: number;
  importKwh: number;
  exportKwh: number;
  /** Export times its credit, $. */
  exportDollars: number;
}

export interface MonthKwh {
  readonly periods: PeriodKwh[];
  /** Days of the month that lie in each season met, by season index. */
  readonly daysInSeason: ReadonlyMap<number, number>;
  readonly importKwh: number;
  readonly exportKwh: number;
  readonly exportDollars: number;
}

export interface MeteredHours {
  readonly layout: TariffHours;
  /** First hour, and the hour after the last, of the month within the layout. */
  readonly from: number;
  readonly to: number;
  readonly importKwh: ArrayLike<number>;
  readonly exportKwh: ArrayLike<number>;
}

/** Add up a month of metered hours by season and period. */
export function monthKwh({ layout, from, to, importKwh, exportKwh }: MeteredHours): MonthKwh {
  const found = new Map<number, PeriodKwh>();
  const hoursIn = new Map<number, number>();
  for (let h = from; h < to; h++) {
    const season = layout.seasonOf[h]!;
    const period = layout.periodOf[h]!;
    const key = season * 256 + period;
    let sum = found.get(key);
    if (!sum) {
      sum = { season, period, importKwh: 0, exportKwh: 0, exportDollars: 0 };
      found.set(key, sum);
    }
    sum.importKwh += importKwh[h]!;
    sum.exportKwh += exportKwh[h]!;
    sum.exportDollars += exportKwh[h]! * layout.exportPrice[h]!;
    hoursIn.set(season, (hoursIn.get(season) ?? 0) + 1);
  }
  const periods = [...found.values()].sort((a, b) => a.season - b.season || a.period - b.period);
  const total = (key: 'importKwh' | 'exportKwh' | 'exportDollars') =>
    periods.reduce((sum, p) => sum + p[key], 0);
  return {
    periods,
    daysInSeason: new Map([...hoursIn].map(([season, hours]) => [season, hours / 24])),
    importKwh: total('importKwh'),
    exportKwh: total('exportKwh'),
    exportDollars: total('exportDollars'),
  };
}
