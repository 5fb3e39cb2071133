import { yearDays } from './bill-days';
import { inSeason, periodsAt } from './clock-hours';
import type { Tariff, TariffSeason } from './tariff';
import { usHolidays } from './us-holidays';

/**
 * What is wrong with a tariff, one sentence each, naming the season and period to look at; empty when it is whole.
 * Negative prices are right: some tariffs have them.
 */
export function checkTariff(tariff: Tariff): string[] {
  const exported = tariff.export.rule === 'net-billing' ? tariff.export.seasons : [];
  return [
    ...checkSeasons(tariff.seasons, 'seasons'),
    ...checkSeasons(exported, 'export seasons'),
    ...[...tariff.seasons, ...exported].flatMap((s) => [
      ...checkClock(s),
      ...checkTiers(s, tariff),
    ]),
    ...checkDemand(tariff),
    ...checkHolidays(tariff),
    ...checkNetting(tariff),
  ];
}

function checkSeasons(seasons: readonly TariffSeason[], what: string): string[] {
  if (seasons.length === 0) return [];
  for (const day of yearDays(2026)) {
    const names = seasons.filter((s) => inSeason(day, s)).map((s) => `"${s.name}"`);
    const date = `${day.month}/${day.dayOfMonth}`;
    if (names.length === 0) return [`${what}: no season covers ${date}. Close the gap.`];
    if (names.length > 1) return [`${what}: ${names.join(' and ')} both cover ${date}. Keep one.`];
  }
  return [];
}

function checkClock(season: TariffSeason): string[] {
  const problems: string[] = [];
  for (const weekend of [false, true]) {
    for (let hour = 0; hour < 24; hour++) {
      const found = periodsAt(season.periods, { weekend, hour });
      const when = `${hour}:00 to ${hour + 1}:00 on ${weekend ? 'weekends' : 'weekdays'}`;
      if (found.length === 1) continue;
      const names = found.map((i) => `"${season.periods[i]!.name}"`).join(' and ');
      problems.push(
        found.length === 0
          ? `season "${season.name}": no period covers ${when}. Give that time a price.`
          : `season "${season.name}": periods ${names} both cover ${when}. Shorten one of them.`,
      );
      break;
    }
  }
  return problems;
}

function checkTiers(season: TariffSeason, tariff: Tariff): string[] {
  const tiers = season.tiers;
  if (tiers === undefined) return [];
  const where = `season "${season.name}"`;
  const problems = tiers.flatMap((tier, i) => {
    const last = i === tiers.length - 1;
    if (last && tier.upToKwh !== undefined) return [`${where}: the last tier must have no end.`];
    if (!last && tier.upToKwh === undefined)
      return [`${where}: tier ${i + 1} needs an end in kWh.`];
    const before = i === 0 ? 0 : (tiers[i - 1]!.upToKwh ?? Number.POSITIVE_INFINITY);
    if (last || tier.upToKwh! > before) return [];
    return [
      `${where}: tier ${i + 1} ends at ${tier.upToKwh} kWh, not after tier ${i} (${before} kWh).`,
    ];
  });
  if (tariff.tierBasis === undefined)
    problems.push(`${where}: say if tiers count per day or month.`);
  return problems;
}

function checkDemand(tariff: Tariff): string[] {
  return (tariff.demand ?? []).flatMap((d) => {
    const doubled = yearDays(2026).find(
      (day) => d.prices.filter((p) => inSeason(day, p)).length > 1,
    );
    if (!doubled) return [];
    const date = `${doubled.month}/${doubled.dayOfMonth}`;
    return [`demand charge "${d.name}": two prices cover ${date}. Keep one.`];
  });
}

function checkHolidays(tariff: Tariff): string[] {
  const known = Object.keys(usHolidays).join(', ');
  return (tariff.holidays ?? [])
    .filter((name) => !/^\d\d-\d\d$/.test(name) && !(name in usHolidays))
    .map((name) => `holiday "${name}" is not known. Write MM-DD or one of: ${known}.`);
}

function checkNetting(tariff: Tariff): string[] {
  if (tariff.export.rule !== 'net-metering' || tariff.export.netting !== 'total') return [];
  const many = tariff.seasons.find((s) => s.periods.length > 1);
  return many
    ? [`season "${many.name}" has ${many.periods.length} periods: net metering must say by-period.`]
    : [];
}
