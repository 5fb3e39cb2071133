import type { DispatchProblem } from './dispatch-problem';

/** Export credit that counts: none without export, and never below zero, since solar can be held back. */
export function exportCredit(problem: DispatchProblem, h: number): number {
  return problem.exportAllowed ? Math.max(0, problem.exportPrice[h]!) : 0;
}

/**
 * House use `a` (load + charging - discharging) at which the meter turns from export to import, kWh.
 * At a price of zero or more: a* = solar. At a negative price the household holds solar back to import more, from
 * the use at which p a = -e (solar - a): a* = e solar / (e - p).
 */
export function turningUse(given: { price: number; credit: number; solar: number }): number {
  const { price, credit, solar } = given;
  if (price >= 0 || solar === 0) return solar;
  return credit === 0 ? 0 : (credit * solar) / (credit - price);
}

/** What goes through the meter when the house and battery together use `useKwh`: the cheapest lawful split. */
export function meterHour(
  problem: DispatchProblem,
  h: number,
  useKwh: number,
): { importKwh: number; exportKwh: number; curtailedKwh: number } {
  const solar = problem.solarKwh[h]!;
  const price = problem.importPrice[h]!;
  const credit = exportCredit(problem, h);
  if (useKwh > turningUse({ price, credit, solar })) {
    const used = price >= 0 ? solar : 0;
    return { importKwh: useKwh - used, exportKwh: 0, curtailedKwh: solar - used };
  }
  const over = solar - useKwh;
  return credit > 0
    ? { importKwh: 0, exportKwh: over, curtailedKwh: 0 }
    : { importKwh: 0, exportKwh: 0, curtailedKwh: Math.max(0, over) };
}
