import type { BillLine } from '../../../bill/tariff/bill-line';
import type { PaperBill } from '../../../bill/tariff/paper-bill';
import { sayBillLine } from './say-bill-line';

/** A month's bill as lines of text in the order of a paper bill, in cents, the total last. */
export function sayBill({ lines, total }: PaperBill): string[] {
  return [...lines.map(sayLine), `Total: ${dollars(total)}`];
}

function sayLine({ is, quantity, unit, price, dollars: sum }: BillLine): string {
  const label = sayBillLine(is);
  if (quantity === null) return `${label}: ${dollars(sum)}`;
  const amount = unit === 'month' && quantity === 1 ? '' : `${number(quantity)} ${unit}`;
  const times = price === null ? '' : ` x ${rate(price)}`;
  return amount === ''
    ? `${label}: ${dollars(sum)}`
    : `${label}: ${amount}${times} = ${dollars(sum)}`;
}

const number = (value: number) => (Number.isInteger(value) ? `${value}` : value.toFixed(1));

/** Prices of a kWh need tenths of a cent and more. */
const rate = (price: number) =>
  `${price < 0 ? '-' : ''}$${Math.abs(price)
    .toFixed(4)
    .replace(/(\.\d\d)(\d*?)0+$/, '$1$2')}`;

/** Dollars and cents, the sign before the dollar sign. */
export function dollars(value: number): string {
  const cents = Math.abs(value).toFixed(2);
  return Number(cents) === 0 ? '$0.00' : `${value < 0 ? '-' : ''}$${cents}`;
}
