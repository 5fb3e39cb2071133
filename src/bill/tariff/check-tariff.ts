import { yearDays } from './bill-days';
import { inSeason, periodsAt } from './clock-hours';
import type { Tariff, TariffSeason } from './tariff';
import type { TariffPath, TariffProblem } from './tariff-fault';
import { usHolidays } from './us-holidays';

/** A fault of a tariff whose form is right. */
interface Found {
  readonly path: TariffPath;
  readonly problem: TariffProblem;
}

/** What is wrong with a tariff; empty when it is whole. Negative prices are right: some tariffs have them. */
export function checkTariff(tariff: Tariff): TariffProblem[] {
  return findFaults(tariff).map((fault) => fault.problem);
}

/** The same with its place in the form. */
export function findFaults(tariff: Tariff): Found[] {
  const exported = tariff.export.rule === 'net-billing' ? tariff.export.seasons : [];
  const each = (seasons: readonly TariffSeason[], at: readonly string[]) =>
    seasons.flatMap((season, i) => [
      ...checkClock(season, [...at, i]),
      ...checkTiers(season, tariff, [...at, i]),
    ]);
  return [
    ...checkSeasons(tariff.seasons, ['seasons']),
    ...checkSeasons(exported, ['export', 'seasons']),
    ...each(tariff.seasons, ['seasons']),
    ...each(exported, ['export', 'seasons']),
    ...checkDemand(tariff),
    ...checkHolidays(tariff),
    ...checkNetting(tariff),
  ];
}

function checkSeasons(seasons: readonly TariffSeason[], path: readonly string[]): Found[] {
  if (seasons.length === 0) return [];
  for (const on of yearDays(2026)) {
    const names = seasons.filter((s) => inSeason(on, s)).map((s) => s.name);
    const day = { month: on.month, dayOfMonth: on.dayOfMonth };
    if (names.length === 1) continue;
    const problem: TariffProblem =
      names.length === 0
        ? { code: 'no-season-covers', list: path, day }
        : { code: 'seasons-overlap', list: path, seasons: names, day };
    return [{ path, problem }];
  }
  return [];
}

function checkClock(season: TariffSeason, path: TariffPath): Found[] {
  const problems: Found[] = [];
  for (const weekend of [false, true]) {
    for (let hour = 0; hour < 24; hour++) {
      const found = periodsAt(season.periods, { weekend, hour });
      if (found.length === 1) continue;
      const at = { season: season.name, hour, weekend };
      const periods = found.map((i) => season.periods[i]!.name);
      const problem: TariffProblem =
        found.length === 0
          ? { code: 'no-period-covers', ...at }
          : { code: 'periods-overlap', periods, ...at };
      problems.push({ path: [...path, 'periods', found[1] ?? 0], problem });
      break;
    }
  }
  return problems;
}

function checkTiers(season: TariffSeason, tariff: Tariff, given: TariffPath): Found[] {
  const tiers = season.tiers;
  if (tiers === undefined) return [];
  const of = { season: season.name };
  const problems = tiers.flatMap((tier, i): Found[] => {
    const path = [...given, 'tiers', i];
    const last = i === tiers.length - 1;
    if (last && tier.upToKwh !== undefined)
      return [{ path, problem: { code: 'last-tier-has-end', ...of } }];
    if (!last && tier.upToKwh === undefined)
      return [{ path, problem: { code: 'tier-without-end', ...of, tier: i + 1 } }];
    const beforeKwh = i === 0 ? 0 : (tiers[i - 1]!.upToKwh ?? Number.POSITIVE_INFINITY);
    const kwh = tier.upToKwh!;
    if (last || kwh > beforeKwh) return [];
    return [{ path, problem: { code: 'tiers-out-of-order', ...of, tier: i + 1, kwh, beforeKwh } }];
  });
  if (tariff.tierBasis === undefined) {
    problems.push({ path: [...given, 'tiers'], problem: { code: 'tier-basis-missing', ...of } });
  }
  return problems;
}

function checkDemand(tariff: Tariff): Found[] {
  return (tariff.demand ?? []).flatMap((d, i): Found[] => {
    const doubled = yearDays(2026).find(
      (day) => d.prices.filter((p) => inSeason(day, p)).length > 1,
    );
    if (!doubled) return [];
    const day = { month: doubled.month, dayOfMonth: doubled.dayOfMonth };
    const problem = { code: 'demand-prices-overlap', charge: d.name, day } as const;
    return [{ path: ['demand', i, 'prices'], problem }];
  });
}

function checkHolidays(tariff: Tariff): Found[] {
  const known = Object.keys(usHolidays);
  return (tariff.holidays ?? []).flatMap((name, i): Found[] => {
    if (/^\d\d-\d\d$/.test(name) || Object.hasOwn(usHolidays, name)) return [];
    return [
      { path: ['holidays', i], problem: { code: 'holiday-not-known', holiday: name, known } },
    ];
  });
}

function checkNetting(tariff: Tariff): Found[] {
  if (tariff.export.rule !== 'net-metering' || tariff.export.netting !== 'total') return [];
  const many = tariff.seasons.find((s) => s.periods.length > 1);
  if (many === undefined) return [];
  const problem = {
    code: 'netting-by-period',
    season: many.name,
    periods: many.periods.length,
  } as const;
  return [{ path: ['export', 'netting'], problem }];
}
