import type { CashFlow } from './cash-flow';

/** When an outlay is got back. Never a 0, an infinity or a NaN: the cases without a year are named. */
export type Payback =
  /** Nothing is spent beyond what would be spent anyway. */
  | { readonly kind: 'nothing-to-recover' }
  | { readonly kind: 'never' }
  /** Got back once, then lost again to a later cost, and not recovered by the end. */
  | { readonly kind: 'lost-again'; readonly first: PaybackTime }
  | {
      readonly kind: 'recovered';
      readonly first: PaybackTime;
      /** From when it stays recovered; later than `first` where a replacement undid it for a while. */
      readonly stays: PaybackTime;
    };

export interface PaybackTime {
  /** The first year by whose end the outlay is back. */
  readonly wholeYear: number;
  /** Years, with the last year's flow taken as even over the year. */
  readonly years: number;
}

/**
 * Payback of a flow: the smallest y with sum over t = 0..y of CF_t (1 + d)^-t >= 0. Simple payback has d = 0.
 * years = (y - 1) + what is unrecovered at y - 1 / flow of year y. ASTM E1121; NIST Handbook 135 (1995) warns that a
 * later replacement can undo a payback, so first crossing and staying recovered are both given.
 */
export function payback(flow: CashFlow, rate = 0): Payback {
  if ((flow[0] ?? 0) >= 0) return { kind: 'nothing-to-recover' };
  const crossings: PaybackTime[] = [];
  let balance = flow[0]!;
  // Sums of cents that ought to cancel do so only to rounding.
  const tiny = 1e-9 * -balance;
  for (let y = 1; y < flow.length; y++) {
    const amount = flow[y]! * (1 + rate) ** -y;
    const after = balance + amount;
    if (balance < -tiny && after >= -tiny) {
      crossings.push({ wholeYear: y, years: y - 1 + Math.min(1, -balance / amount) });
    }
    balance = after;
  }
  const first = crossings[0];
  if (first === undefined) return { kind: 'never' };
  if (balance < -tiny) return { kind: 'lost-again', first };
  return { kind: 'recovered', first, stays: crossings.at(-1)! };
}
