import type { ClockPrices } from './bill-reading';
import type { TariffPeriod, TariffSeason } from './tariff';
import { named, type TariffCode } from './tariff-name';

const peakMonths = {
  summer: { from: '06-01', to: '09-30', rest: ['10-01', '05-31'] },
  winter: { from: '12-01', to: '03-31', rest: ['04-01', '11-30'] },
} as const;

/**
 * The seasons of prices by the clock: one for the whole year, or two where the prices read hold in a part of it. In
 * the rest of the year the hours are the same and have the prices told for it; with none told, no hour is a peak.
 */
export function seasonsOf(energy: ClockPrices): TariffSeason<TariffCode>[] {
  const { months, rest } = energy;
  const periods: TariffPeriod<TariffCode>[] = [
    ...energy.periods.map(({ is, ...period }) => ({ name: named(is), ...period })),
    { name: named('other-hours'), price: energy.otherPrice },
  ];
  if (months === undefined)
    return [{ name: named('all-year'), from: '01-01', to: '12-31', periods }];
  const at = peakMonths[months];
  const restPeriods =
    rest === undefined
      ? periods.filter((period) => period.name.code !== 'peak')
      : periods.map((period, at) => ({ ...period, price: restPrice(periods, at, rest) }));
  return [
    { name: named(months), from: at.from, to: at.to, periods },
    { name: named('rest-of-year'), from: at.rest[0], to: at.rest[1], periods: restPeriods },
  ];
}

/** With two prices all other hours are the cheap ones; with three they are the middle ones. */
function restPrice(
  periods: readonly TariffPeriod<TariffCode>[],
  at: number,
  rest: NonNullable<ClockPrices['rest']>,
): number {
  if (periods[at]!.name.code === 'peak') return rest.peak;
  const others = at === periods.length - 1;
  return others && periods.length > 2 ? rest.middle : rest.low;
}
