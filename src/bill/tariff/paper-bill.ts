import type { BillLine } from './bill-line';
import type { MonthBill } from './bill-month';

/** A month's bill as a paper bill prints it: every line in whole cents, and the total the sum of what is printed. */
export interface PaperBill {
  readonly lines: readonly BillLine[];
  /** $, whole cents. */
  readonly total: number;
}

/**
 * Round each line to cents, halves away from zero, then add up: so the lines printed come to the total printed. It
 * differs from the exact total by at most half a cent a line.
 */
export function paperBill({ lines }: Pick<MonthBill, 'lines'>): PaperBill {
  const cents = lines.map((line) => toCents(line.dollars));
  return {
    lines: lines.map((line, i) => ({ ...line, dollars: cents[i]! / 100 })),
    total: cents.reduce((sum, each) => sum + each, 0) / 100,
  };
}

function toCents(dollars: number): number {
  // 148.335 x 100 is 14833.499999999998 in binary; twelve digits are more than a bill has.
  const cents = Math.round(Number((100 * Math.abs(dollars)).toPrecision(12)));
  return cents === 0 ? 0 : Math.sign(dollars) * cents;
}
