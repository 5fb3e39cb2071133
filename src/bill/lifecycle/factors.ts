/**
 * Single present value of 1 paid at the end of year t: SPV = (1 + d)^-t.
 * d as a fraction above -1, t in years. NIST Handbook 135 (1995), table of factors; ASTM E917.
 */
export function singlePresentValue({ rate, years }: { rate: number; years: number }): number {
  assertRate(rate);
  return (1 + rate) ** -years;
}

/** Present value of 1 at the end of each of n years: UPV = ((1 + d)^n - 1) / (d (1 + d)^n); n when d = 0. */
export function uniformPresentValue({ rate, years }: { rate: number; years: number }): number {
  assertRate(rate);
  if (rate === 0) return years;
  const grown = (1 + rate) ** years;
  return (grown - 1) / (rate * grown);
}

/**
 * Present value of an amount priced today that rises e a year, paid at the end of each of n years:
 * UPV* = sum over t = 1..n of ((1 + e) / (1 + d))^t. The first payment is already (1 + e).
 */
export function escalatedPresentValue(given: {
  rate: number;
  escalation: number;
  years: number;
}): number {
  assertRate(given.rate);
  const { rate, escalation, years } = given;
  if (Math.abs(rate - escalation) < 1e-12) return years;
  const ratio = (1 + escalation) / (1 + rate);
  return ((1 + escalation) / (rate - escalation)) * (1 - ratio ** years);
}

/** Level yearly amount worth 1 today: UCR = 1 / UPV. */
export function capitalRecovery(given: { rate: number; years: number }): number {
  return 1 / uniformPresentValue(given);
}

/** Rate without inflation: d = (1 + D) / (1 + I) - 1. The same form serves escalation, e = (E - I) / (1 + I). */
export function realRate({ nominal, inflation }: { nominal: number; inflation: number }): number {
  assertRate(inflation);
  return (1 + nominal) / (1 + inflation) - 1;
}

function assertRate(rate: number): void {
  if (!(rate > -1)) throw new RangeError(`a yearly rate of ${rate} is not above -1`);
}
