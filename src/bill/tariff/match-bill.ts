import type { Tariff } from './tariff';

export interface PrintedBill {
  readonly kwh: number;
  readonly dollars: number;
  readonly days: number;
}

export interface BillMatch {
  readonly fits: boolean;
  /** The least and the most such a use can cost under the tariff, $. */
  readonly expected: { readonly low: number; readonly high: number };
  /** What to look at on the bill; empty when it fits. */
  readonly says: string;
}

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
    return { fits: false, expected: { low: 0, high: 0 }, says: lookAtKwh(printed) };
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
  if (!under && (!over || open)) return { fits: true, expected, says: '' };
  return { fits: false, expected, says: lookAt({ ...printed, expected, over, fixed }) };
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
  at: { energy: number; fixed: number; kwh: number; months: number },
): number {
  const more = riders.reduce(
    (sum, { perKwh = 0, perMonth = 0, shareOfEnergy = 0 }) =>
      sum + perKwh * at.kwh + perMonth * at.months + shareOfEnergy * at.energy,
    0,
  );
  const share = taxes.reduce((sum, tax) => sum + tax.share, 0);
  const [least, sum] = [minimumBill * at.months, at.energy + at.fixed + more];
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

function lookAtKwh({ kwh, days }: PrintedBill): string {
  return `The bill shows ${kwh} kWh over ${days} days. Look at the line with the meter readings.`;
}

function lookAt(
  at: PrintedBill & {
    expected: BillMatch['expected'];
    over: boolean;
    fixed: number;
  },
): string {
  const { low, high } = at.expected;
  const range = high - low < 1 ? `$${low.toFixed(0)}` : `$${low.toFixed(0)} to $${high.toFixed(0)}`;
  const both = `At these prices ${at.kwh} kWh comes to ${range}, and the bill says $${at.dollars.toFixed(0)}.`;
  if (at.over) {
    const missing = at.dollars - high;
    // What is missing spread over the kWh tells a second price from a charge that is the same each month.
    const cents = (100 * missing) / at.kwh;
    return `${both} Look for a second energy or delivery line of about ${cents.toFixed(1)} cents a kWh, for adjustments and taxes, and for a balance from the month before.`;
  }
  return at.fixed > at.dollars
    ? `${both} Look at the fixed or customer charge: as given it is more than the whole bill.`
    : `${both} Look at the line with the kWh and the days, at credit for solar sent out, and at the energy price.`;
}
