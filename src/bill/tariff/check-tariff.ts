import { yearDays } from './bill-days';
import { inSeason, periodsAt } from './clock-hours';
import type { Tariff, TariffSeason } from './tariff';
import { usHolidays } from './us-holidays';

/** Something wrong in a tariff: where in its form, and a sentence that says what to do. */
export interface TariffFault {
  readonly path: readonly (string | number)[];
  readonly says: string;
}

/**
 * What is wrong with a tariff, one sentence each, naming the season and period to look at; empty when it is whole.
 * Negative prices are right: some tariffs have them.
 */
export function checkTariff(tariff: Tariff): string[] {
  return findFaults(tariff).map((fault) => fault.says);
}

/** The same with its place in the form. */
export function findFaults(tariff: Tariff): TariffFault[] {
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

function checkSeasons(seasons: readonly TariffSeason[], path: readonly string[]): TariffFault[] {
  if (seasons.length === 0) return [];
  const what = path.join(' ');
  for (const day of yearDays(2026)) {
    const names = seasons.filter((s) => inSeason(day, s)).map((s) => `"${s.name}"`);
    const date = `${day.month}/${day.dayOfMonth}`;
    if (names.length === 1) continue;
    const says =
      names.length === 0
        ? `${what}: no season covers ${date}. Close the gap.`
        : `${what}: ${names.join(' and ')} both cover ${date}. Keep one.`;
    return [{ path, says }];
  }
  return [];
}

function checkClock(season: TariffSeason, path: TariffFault['path']): TariffFault[] {
  const problems: TariffFault[] = [];
  for (const weekend of [false, true]) {
    for (let hour = 0; hour < 24; hour++) {
      const found = periodsAt(season.periods, { weekend, hour });
      const when = `${hour}:00 to ${hour + 1}:00 on ${weekend ? 'weekends' : 'weekdays'}`;
      if (found.length === 1) continue;
      const names = found.map((i) => `"${season.periods[i]!.name}"`).join(' and ');
      const says =
        found.length === 0
          ? `season "${season.name}": no period covers ${when}. Give that time a price.`
          : `season "${season.name}": periods ${names} both cover ${when}. Shorten one of them.`;
      problems.push({ path: [...path, 'periods', found[1] ?? 0], says });
      break;
    }
  }
  return problems;
}

function checkTiers(season: TariffSeason, tariff: Tariff, at: TariffFault['path']): TariffFault[] {
  const tiers = season.tiers;
  if (tiers === undefined) return [];
  const where = `season "${season.name}"`;
  const problems = tiers.flatMap((tier, i) => {
    const path = [...at, 'tiers', i];
    const last = i === tiers.length - 1;
    if (last && tier.upToKwh !== undefined)
      return [{ path, says: `${where}: the last tier must have no end.` }];
    if (!last && tier.upToKwh === undefined)
      return [{ path, says: `${where}: tier ${i + 1} needs an end in kWh.` }];
    const before = i === 0 ? 0 : (tiers[i - 1]!.upToKwh ?? Number.POSITIVE_INFINITY);
    if (last || tier.upToKwh! > before) return [];
    const says = `${where}: tier ${i + 1} ends at ${tier.upToKwh} kWh, not after tier ${i} (${before} kWh).`;
    return [{ path, says }];
  });
  if (tariff.tierBasis === undefined) {
    const says = `${where}: say if tiers count per day or month, with tierBasis.`;
    problems.push({ path: [...at, 'tiers'], says });
  }
  return problems;
}

function checkDemand(tariff: Tariff): TariffFault[] {
  return (tariff.demand ?? []).flatMap((d, i) => {
    const doubled = yearDays(2026).find(
      (day) => d.prices.filter((p) => inSeason(day, p)).length > 1,
    );
    if (!doubled) return [];
    const date = `${doubled.month}/${doubled.dayOfMonth}`;
    const says = `demand charge "${d.name}": two prices cover ${date}. Keep one.`;
    return [{ path: ['demand', i, 'prices'], says }];
  });
}

function checkHolidays(tariff: Tariff): TariffFault[] {
  const known = Object.keys(usHolidays).join(', ');
  return (tariff.holidays ?? []).flatMap((name, i) => {
    if (/^\d\d-\d\d$/.test(name) || Object.hasOwn(usHolidays, name)) return [];
    const says = `holiday "${name}" is not known. Write MM-DD or one of: ${known}.`;
    return [{ path: ['holidays', i], says }];
  });
}

function checkNetting(tariff: Tariff): TariffFault[] {
  if (tariff.export.rule !== 'net-metering' || tariff.export.netting !== 'total') return [];
  const many = tariff.seasons.find((s) => s.periods.length > 1);
  if (many === undefined) return [];
  const says = `season "${many.name}" has ${many.periods.length} periods: net metering must say netting: by-period.`;
  return [{ path: ['export', 'netting'], says }];
}
