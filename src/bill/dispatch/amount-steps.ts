import { tierScale } from '../tariff/energy-lines';
import type { Tariff, TariffSeason } from '../tariff/tariff';

/** What is added to the clock price of a kWh by the amount imported so far: up to `toKwh` of the month's part. */
export interface AmountStep {
  readonly toKwh: number;
  /** $/kWh. */
  readonly added: number;
}

/**
 * Tiers and baseline credit of one season's part of a billing month as one list of steps, the last without end.
 * One step of zero when the tariff prices by the clock alone.
 */
export function amountSteps(
  tariff: Tariff,
  part: { season: TariffSeason; days: number; monthDays: number },
): AmountStep[] {
  const scale = tierScale(tariff, part);
  const { season } = part;
  const tiers = (season.tiers ?? [{ price: 0 }]).map((t) => ({
    to: t.upToKwh === undefined ? Number.POSITIVE_INFINITY : t.upToKwh * scale,
    added: t.price,
  }));
  const credit = season.baselineKwhPerDay === undefined ? 0 : (tariff.baselineCredit ?? 0);
  const baseline = (season.baselineKwhPerDay ?? 0) * part.days;
  const ends = new Set(tiers.map((t) => t.to));
  if (credit !== 0) ends.add(baseline);
  return [...ends]
    .sort((a, b) => a - b)
    .map((toKwh) => {
      const tier = tiers.find((t) => t.to >= toKwh)!;
      return { toKwh, added: tier.added - (toKwh <= baseline ? credit : 0) };
    });
}

/** Dollars the steps add to an amount imported. */
export function amountCost(steps: readonly AmountStep[], kwh: number): number {
  let from = 0;
  let cost = 0;
  for (const step of steps) {
    cost += step.added * Math.max(0, Math.min(kwh, step.toKwh) - from);
    from = step.toKwh;
  }
  return cost;
}

/** $/kWh the steps add to the next kWh after an amount. */
export function addedAt(steps: readonly AmountStep[], kwh: number): number {
  return steps.find((s) => kwh < s.toKwh)?.added ?? 0;
}
