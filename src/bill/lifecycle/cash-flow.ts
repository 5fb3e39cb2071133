/** Money at the end of each year, $; year 0 is today. Costs are negative. */
export type CashFlow = readonly number[];

/** Net present value: sum over t of CF_t (1 + r)^-t. ASTM E1074 (net benefits). */
export function netPresentValue(flow: CashFlow, rate: number): number {
  // Horner from the last year keeps (1 + r)^-t out of the sum.
  return flow.reduceRight((sum, amount) => sum / (1 + rate) + amount, 0);
}

export interface RatesOfReturn {
  /** Every rate between -90 % and 1,000 % a year at which the net present value is zero, rising. */
  readonly rates: readonly number[];
  /** Changes of sign in the flow: no more rates than this exist (Descartes). */
  readonly signChanges: number;
  readonly kind: 'none' | 'one' | 'several';
}

/**
 * Internal rates of return, ASTM E1057: all r with NPV(r) = 0. In x = 1 / (1 + r) the present value is a polynomial;
 * its roots lie one each between neighboring roots of its derivative, so they are found all, by halving.
 */
export function ratesOfReturn(flow: CashFlow): RatesOfReturn {
  const signs = flow.filter((amount) => amount !== 0).map(Math.sign);
  const signChanges = signs.filter((sign, i) => i > 0 && sign !== signs[i - 1]).length;
  const roots = signChanges === 0 ? [] : rootsBetween(flow, 1 / 11, 10);
  const rates = roots.map((x) => 1 / x - 1).sort((a, b) => a - b);
  const kind = rates.length === 0 ? 'none' : rates.length === 1 ? 'one' : 'several';
  return { rates, signChanges, kind };
}

/** Roots of sum c_k x^k at which its sign changes, between low and high, rising. */
function rootsBetween(c: readonly number[], low: number, high: number): number[] {
  if (c.length < 2) return [];
  const slope = c.slice(1).map((amount, k) => amount * (k + 1));
  const marks = [low, ...rootsBetween(slope, low, high), high];
  const value = (x: number) => c.reduceRight((sum, amount) => sum * x + amount, 0);
  return marks.slice(1).flatMap((to, i) => {
    const root = halve(value, marks[i]!, to);
    return root === null ? [] : [root];
  });
}

function halve(value: (x: number) => number, from: number, to: number): number | null {
  let [low, high] = [from, to];
  const sign = Math.sign(value(low));
  if (sign === 0) return low;
  if (sign === Math.sign(value(high))) return null;
  for (let i = 0; i < 200 && high - low > 1e-15 * high; i++) {
    const middle = (low + high) / 2;
    if (Math.sign(value(middle)) === sign) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
