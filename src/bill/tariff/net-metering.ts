import type { MonthKwh } from './month-kwh';
import type { Tariff } from './tariff';

/** kWh to charge by period after export is set against import, and what is left over. */
export interface NettedKwh {
  /** Charged kWh, in the order of `MonthKwh.periods`. */
  readonly charged: readonly number[];
  readonly bankKwh: number;
  /** $ for periods that came out below zero, at their own price. */
  readonly leftOverDollars: number;
}

/** Set export against import as the tariff says; without net metering every imported kWh is charged. */
export function netKwh(tariff: Tariff, month: MonthKwh, bankKwh: number): NettedKwh {
  const rule = tariff.export;
  if (rule.rule !== 'net-metering') {
    return { charged: month.periods.map((p) => p.importKwh), bankKwh: 0, leftOverDollars: 0 };
  }
  return rule.netting === 'total' ? netTotal(month, bankKwh) : netByPeriod(tariff, month);
}

function netTotal(month: MonthKwh, bankKwh: number): NettedKwh {
  const net = month.importKwh - month.exportKwh - bankKwh;
  const left = Math.max(0, net);
  // One price holds all month (checkTariff), so it does not matter which import the rest is counted to.
  const share = month.importKwh > 0 ? left / month.importKwh : 0;
  return {
    charged: month.periods.map((p) => p.importKwh * share),
    bankKwh: Math.max(0, -net),
    leftOverDollars: 0,
  };
}

function netByPeriod(tariff: Tariff, month: MonthKwh): NettedKwh {
  let leftOverDollars = 0;
  const charged = month.periods.map((p) => {
    const net = p.importKwh - p.exportKwh;
    if (net >= 0) return net;
    leftOverDollars -= net * tariff.seasons[p.season]!.periods[p.period]!.price;
    return 0;
  });
  return { charged, bankKwh: 0, leftOverDollars };
}
