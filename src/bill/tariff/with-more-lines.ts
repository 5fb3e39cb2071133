import type { MoreLines } from './bill-reading';
import type { Tariff } from './tariff';
import { named } from './tariff-name';

/**
 * A tariff with the smaller lines of a bill: riders, tax, least bill, baseline credit, and a first block that grows
 * with the days of the bill. The tax is taken on all charges before any credit for solar, as most bills do: common
 * practice, no source.
 */
export function withMoreLines(tariff: Tariff, more: MoreLines): Tariff {
  const { riderPerKwh, riderPerMonth, taxShare, leastBill, baseline, blockDays } = more;
  const riders = [
    ...(riderPerKwh === null ? [] : [{ name: named('charge-per-kwh'), perKwh: riderPerKwh }]),
    ...(riderPerMonth === null
      ? []
      : [{ name: named('charge-per-month'), perMonth: riderPerMonth }]),
  ];
  const hasTiers = tariff.seasons.some((season) => season.tiers !== undefined);
  return {
    ...tariff,
    ...(riders.length > 0 && { riders }),
    ...(taxShare !== null && {
      taxes: [{ name: named('tax'), share: taxShare, on: 'charges' as const }],
    }),
    ...(leastBill !== null && { minimumBill: leastBill }),
    ...(blockDays !== null && hasTiers && { tierProrateDays: blockDays }),
    ...(baseline !== null && {
      baselineCredit: baseline.creditPerKwh,
      seasons: tariff.seasons.map((season) => ({
        ...season,
        baselineKwhPerDay: baseline.kwhPerDay,
      })),
    }),
  };
}
