import type { Tariff } from './tariff';

export interface PrintedBill {
  readonly kwh: number;
  readonly dollars: number;
  readonly days: number;
}

/** The least and the most such a use can cost under a tariff, $. */
export interface Expected {
  readonly low: number;
  readonly high: number;
}

/** What of a bill to look at again. */
export type LookAt =
  | { readonly code: 'meter-readings' }
  /** What is missing, spread over the kWh: cents tell a second price from a charge that is the same each month. */
  | { readonly code: 'more-lines'; readonly missingDollars: number }
  /** The fixed charge as given is more than the whole bill. */
  | { readonly code: 'fixed-charge' }
  | { readonly code: 'kwh-credit-price' };

export interface BillFits {
  readonly fits: true;
  readonly expected: Expected;
}

export interface BillMismatch {
  readonly fits: false;
  readonly expected: Expected;
  readonly printed: PrintedBill;
  readonly lookAt: LookAt;
}

export type BillMatch = BillFits | BillMismatch;

/** A bill may differ by this much before we ask. */
const tolerance = 0.1;

/**
 * Hold a printed bill against the tariff given: can this use cost that much, to within 10 %? By the clock, the least
 * is all use at the lowest price and the most all at the highest; riders, tax and a least bill are on top. A demand
 * charge and export are not known from kWh alone, so with a demand charge only the least is held against the bill.
 */
export function matchBill(tariff: Tariff, printed: PrintedBill): BillMatch {
  const { kwh, dollars, days } = printed;
  if (!(kwh > 0 && days > 0)) {
    const lookAt = { code: 'meter-readings' } as const;
    return { fits: false, expected: { low: 0, high: 0 }, printed, lookAt };
  }
  const months = days / DAYS_A_MONTH;
  const fixed = (tariff.fixed.perMonth ?? 0) * months + (tariff.fixed.perDay ?? 0) * days;
  const ends = tariff.seasons.map((season) => {
    const prices = season.periods.map((p) => p.price);
    const tiers = tierCost(season.tiers ?? [], kwh, tierScale(tariff, days));
    const credit =
      (tariff.baselineCredit ?? 0) * Math.min(kwh, (season.baselineKwhPerDay ?? 0) * days);
    return {
      low: kwh * Math.min(...prices) + tiers - credit,
      high: kwh * Math.max(...prices) + tiers - credit,
    };
  });
  const open = (tariff.demand?.length ?? 0) > 0;
  const whole = (energy: number) => withRest(tariff, { energy, fixed, kwh, months });
  const low = whole(Math.min(...ends.map((e) => e.low)));
  const high = whole(Math.max(...ends.map((e) => e.high)));
  const expected = { low, high };
  const over = dollars > high * (1 + tolerance);
  const under = dollars < low * (1 - tolerance);
  if (!under && (!over || open)) return { fits: true, expected };
  const lookAt: LookAt = over
    ? { code: 'more-lines', missingDollars: dollars - high }
    : { code: fixed > dollars ? 'fixed-charge' : 'kwh-credit-price' };
  return { fits: false, expected, printed, lookAt };
}

const DAYS_A_MONTH = 365 / 12;

/** What a tier's end is multiplied by on a bill of so many days. */
function tierScale({ tierBasis, tierProrateDays }: Tariff, days: number): number {
  if (tierBasis === 'day') return days;
  return tierProrateDays === undefined ? 1 : days / tierProrateDays;
}

/** Fixed and energy with riders, tax and the least bill. */
function withRest(
  { riders = [], taxes = [], minimumBill = Number.NEGATIVE_INFINITY, minimumBillTax }: Tariff,
  given: { energy: number; fixed: number; kwh: number; months: number },
): number {
  const more = riders.reduce(
    (sum, { perKwh = 0, perMonth = 0, shareOfEnergy = 0 }) =>
      sum + perKwh * given.kwh + perMonth * given.months + shareOfEnergy * given.energy,
    0,
  );
  const share = taxes.reduce((sum, tax) => sum + tax.share, 0);
  const [least, sum] = [minimumBill * given.months, given.energy + given.fixed + more];
  return minimumBillTax === 'after'
    ? Math.max(least, sum * (1 + share))
    : Math.max(least, sum) * (1 + share);
}

function tierCost(
  tiers: readonly { upToKwh?: number; price: number }[],
  kwh: number,
  scale: number,
) {
  let from = 0;
  return tiers.reduce((sum, tier) => {
    const end = (tier.upToKwh ?? Number.POSITIVE_INFINITY) * scale;
    const part = Math.max(0, Math.min(kwh, end) - from);
    from = end;
    return sum + part * tier.price;
  }, 0);
}
