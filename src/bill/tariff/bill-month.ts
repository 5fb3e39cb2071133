import { amount, type BillLine, line, sumLines } from './bill-line';
import { demandLines, monthPeaks } from './demand-lines';
import { energyLines } from './energy-lines';
import { type MeteredHours, type MonthKwh, monthKwh } from './month-kwh';
import { netKwh } from './net-metering';
import type { PeakFactors } from './peak-factors';
import { settleBill, taxLines } from './settle-bill';
import type { Tariff } from './tariff';

/** What one bill hands on to the next. */
export interface BillCarry {
  readonly bankKwh: number;
  readonly creditDollars: number;
  /** Sent out less taken in since the last yearly true-up, kWh; below zero where more was taken in. */
  readonly sentOutKwh: number;
  /** Peaks of earlier months, kW, for each demand charge. */
  readonly peaksKw: readonly (readonly number[])[];
}

export interface MonthBill {
  readonly month: number;
  readonly importKwh: number;
  readonly exportKwh: number;
  readonly lines: readonly BillLine[];
  /** $; the sum of the lines. */
  readonly total: number;
  readonly carry: BillCarry;
}

export const noCarry: BillCarry = {
  bankKwh: 0,
  creditDollars: 0,
  sentOutKwh: 0,
  peaksKw: [],
};

/**
 * One month's bill, line by line. Import and export are kWh an hour at the meter, already netted within the hour.
 * bill = max(what credit may not pay, fixed + energy + demand + riders + tax - credits), and not below the minimum, which
 * holds before tax unless the tariff says after it.
 */
export function billMonth(
  tariff: Tariff,
  metered: MeteredHours & { peakFactors?: PeakFactors },
  carry: BillCarry = noCarry,
): MonthBill {
  const month = metered.layout.monthOf[metered.from]!;
  const sums = monthKwh(metered);
  const netted = netKwh(tariff, sums, carry.bankKwh);
  const peaks = monthPeaks(tariff, metered);
  const days = (metered.to - metered.from) / 24;
  const energy = monthEnergy(tariff, sums, netted.charged, days);
  const charges = [
    ...fixedLines(tariff, days),
    ...energy,
    ...demandLines(tariff, peaks, carry.peaksKw),
    ...riderLines(tariff, energy, netted.charged),
  ];
  charges.push(...taxLines(tariff, 'charges', sumLines(charges)));
  const { credit, bankKwh } = exportCredit(tariff, { month, sums, netted });
  const sentOutKwh = carry.sentOutKwh + sums.exportKwh - sums.importKwh;
  const trueUp = isTrueUp(tariff, month);
  const settled = settleBill(tariff, {
    charges,
    credit,
    carried: carry.creditDollars,
    leftKwh: trueUp && netsByPeriod(tariff) ? Math.max(0, sentOutKwh) : null,
  });
  const lines = [...charges, ...settled.lines];
  return {
    month,
    importKwh: sums.importKwh,
    exportKwh: sums.exportKwh,
    lines,
    total: sumLines(lines),
    carry: {
      bankKwh,
      creditDollars: settled.left,
      sentOutKwh: trueUp ? 0 : sentOutKwh,
      peaksKw: peaks.map((p, i) => [...(carry.peaksKw[i] ?? []), p.kw]),
    },
  };
}

const isTrueUp = ({ export: rule }: Tariff, month: number) =>
  rule.rule === 'net-metering' && rule.trueUpMonth === month;

const netsByPeriod = ({ export: rule }: Tariff) =>
  rule.rule === 'net-metering' && rule.netting === 'by-period';

function fixedLines(tariff: Tariff, days: number): BillLine[] {
  const { perMonth, perDay } = tariff.fixed;
  const lines: BillLine[] = [];
  if (perMonth !== undefined) {
    lines.push(line('fixed', 'fixed-charge', { quantity: 1, unit: 'month', price: perMonth }));
  }
  if (perDay !== undefined) {
    lines.push(line('fixed', 'fixed-charge', { quantity: days, unit: 'day', price: perDay }));
  }
  return lines;
}

function monthEnergy(
  tariff: Tariff,
  sums: MonthKwh,
  charged: readonly number[],
  monthDays: number,
): BillLine[] {
  return [...sums.daysInSeason].flatMap(([s, days]) => {
    const season = tariff.seasons[s]!;
    const kwh = season.periods.map((_, p) => {
      const i = sums.periods.findIndex((x) => x.season === s && x.period === p);
      return i < 0 ? 0 : charged[i]!;
    });
    return energyLines(tariff, { season, days, monthDays, kwh });
  });
}

function riderLines(
  tariff: Tariff,
  energy: readonly BillLine[],
  charged: readonly number[],
): BillLine[] {
  const kwh = charged.reduce((sum, k) => sum + k, 0);
  return (tariff.riders ?? []).flatMap((rider) => {
    const lines: BillLine[] = [];
    if (rider.perKwh !== undefined) {
      lines.push(
        line(
          'rider',
          { code: 'named', name: rider.name },
          { quantity: kwh, unit: 'kWh', price: rider.perKwh },
        ),
      );
    }
    if (rider.perMonth !== undefined) {
      lines.push(
        line(
          'rider',
          { code: 'named', name: rider.name },
          { quantity: 1, unit: 'month', price: rider.perMonth },
        ),
      );
    }
    if (rider.shareOfEnergy !== undefined) {
      lines.push(
        amount(
          'rider',
          { code: 'named', name: rider.name },
          rider.shareOfEnergy * sumLines(energy),
        ),
      );
    }
    return lines;
  });
}

function exportCredit(
  tariff: Tariff,
  given: { month: number; sums: MonthKwh; netted: ReturnType<typeof netKwh> },
): { credit: BillLine[]; bankKwh: number } {
  const { sums, netted } = given;
  const rule = tariff.export;
  const { bankKwh } = netted;
  if (rule.rule === 'none') return { credit: [], bankKwh: 0 };
  if (rule.rule !== 'net-metering') {
    if (sums.exportKwh === 0) return { credit: [], bankKwh: 0 };
    const credit = {
      ...amount('export', 'export-credit', -sums.exportDollars),
      quantity: sums.exportKwh,
    };
    return { credit: [{ ...credit, unit: 'kWh' }], bankKwh: 0 };
  }
  const credit: BillLine[] = [];
  if (netted.leftOverDollars !== 0) {
    credit.push(amount('export', 'left-over-in-period', -netted.leftOverDollars));
  }
  if (!isTrueUp(tariff, given.month) || bankKwh === 0) return { credit, bankKwh };
  const paid = { quantity: bankKwh, unit: 'kWh', price: -rule.trueUpPrice } as const;
  return { credit: [...credit, line('export', 'yearly-true-up', paid)], bankKwh: 0 };
}
