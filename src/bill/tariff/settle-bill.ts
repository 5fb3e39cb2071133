import { amount, type BillLine, line, sumLines } from './bill-line';
import type { Tariff } from './tariff';

/** What stands on a bill before credit is set against it. */
export interface ToSettle {
  readonly charges: readonly BillLine[];
  readonly credit: readonly BillLine[];
  /** Credit of earlier months, $. */
  readonly carried: number;
  /** kWh of the year left over at a yearly true-up that wipes credit in dollars; null in all other months. */
  readonly leftKwh: number | null;
}

/**
 * Set credit against charges down to the floor and carry the rest in dollars. At a yearly true-up of net metering by
 * period the rest lapses, and the kWh left over of the year are paid at the true-up price: usual where net metering
 * meets prices by the clock (common practice, no source). Then the least bill and the tax on what is left.
 */
export function settleBill(tariff: Tariff, given: ToSettle): { lines: BillLine[]; left: number } {
  const { charges, credit, carried, leftKwh } = given;
  const due = sumLines(charges);
  const floor = creditFloor(tariff, charges);
  const lines: BillLine[] = [...credit];
  if (carried > 0) lines.push(amount('carried', 'earlier-credit', -carried));
  const over = () => Math.max(0, floor - (due + sumLines(lines)));
  let left = over();
  if (leftKwh !== null) {
    if (left > 0) lines.push(amount('carried', 'credit-that-ends', left));
    if (leftKwh > 0) lines.push(trueUp(tariff, leftKwh));
    left = over();
  }
  if (left > 0) lines.push(amount('carried', 'credit-kept', left));
  return { lines: [...lines, ...last(tariff, charges, lines)], left };
}

/** The least bill, before or after tax as the tariff says, and the tax on what is left. */
function last(
  tariff: Tariff,
  charges: readonly BillLine[],
  settled: readonly BillLine[],
): BillLine[] {
  const before = [...charges, ...settled];
  const beforeTax = tariff.minimumBillTax !== 'after';
  const short = (sum: number) => Math.max(0, (tariff.minimumBill ?? -Infinity) - sum);
  const untaxed = short(sumLines(before) - sumLines(before, 'tax'));
  const lines: BillLine[] = [];
  if (beforeTax && untaxed > 0) {
    lines.push(amount('minimum', 'minimum-before-tax', untaxed));
    lines.push(...taxLines(tariff, 'charges', untaxed));
  }
  lines.push(...taxLines(tariff, 'bill', sumLines(before) + sumLines(lines)));
  const taxed = short(sumLines(before) + sumLines(lines));
  if (!beforeTax && taxed > 0) lines.push(amount('minimum', 'minimum-with-tax', taxed));
  return lines;
}

/** The taxes on a base, $. */
export function taxLines(tariff: Tariff, on: 'charges' | 'bill', base: number): BillLine[] {
  return (tariff.taxes ?? [])
    .filter((tax) => tax.on === on)
    .map((tax) => amount('tax', { code: 'named', name: tax.name }, tax.share * base));
}

function trueUp({ export: rule }: Tariff, kwh: number): BillLine {
  const price = rule.rule === 'net-metering' ? -rule.trueUpPrice : 0;
  return line('export', 'yearly-true-up', { quantity: kwh, unit: 'kWh', price });
}

/** The least credit may bring the bill down to; without a floor it may go below zero and be paid out. */
function creditFloor(tariff: Tariff, charges: readonly BillLine[]): number {
  if (tariff.creditFloor === undefined) return Number.NEGATIVE_INFINITY;
  const kinds: BillLine['kind'][] = ['fixed'];
  if (tariff.creditFloor === 'fixed-and-demand') kinds.push('demand');
  return Math.min(sumLines(charges), sumLines(charges, ...kinds));
}
