import type { QuestionId } from '#compiled/question-ids.js';
import type { MoreLines } from '../../bill/tariff/bill-reading';
import type { Home } from '../../home/home';
import { toldDollars, toldNumber } from './told-price';

/** The smaller lines of the bill, as told. A least bill that is there but not known is assumed, on the careful side. */
export function moreLinesOf(home: Home): MoreLines {
  const { facts } = home;
  const percent = toldNumber(home, 'tax-percent');
  const [credit, kwhPerDay] = [
    toldDollars(home, 'baseline-credit'),
    toldNumber(home, 'baseline-kwh'),
  ];
  const grows = facts.has('bill-lines', 'block-days');
  return {
    riderPerKwh: toldDollars(home, 'rider-kwh'),
    riderPerMonth: toldNumber(home, 'rider-month'),
    taxShare: percent === null ? null : percent / 100,
    leastBill: facts.number('least-bill'),
    baseline: credit === null || kwhPerDay === null ? null : { creditPerKwh: credit, kwhPerDay },
    blockDays: grows ? (facts.number('bill-days') ?? 30) : null,
  };
}

/** A line of the bill that was seen and whose figures are not known. */
export type LineLeftOut = 'rider-kwh' | 'rider-month' | 'tax' | 'baseline' | 'ratchet';

/** Lines the household saw on the bill and could not give the figures of. */
export function linesLeftOut({ facts }: Home): LineLeftOut[] {
  const open = (id: QuestionId) => facts.applies(id) && !facts.told(id);
  const lines: readonly [boolean, LineLeftOut][] = [
    [open('rider-kwh'), 'rider-kwh'],
    [open('rider-month'), 'rider-month'],
    [open('tax-percent'), 'tax'],
    [open('baseline-credit') || open('baseline-kwh'), 'baseline'],
    [open('ratchet-share'), 'ratchet'],
  ];
  return lines.filter(([isOpen]) => isOpen).map(([, line]) => line);
}
