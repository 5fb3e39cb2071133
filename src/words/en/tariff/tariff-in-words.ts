import type { Tariff, TariffSeason } from '../../../bill/tariff/tariff';
import type { TariffName } from '../../../bill/tariff/tariff-name';
import { sayTariffName } from './say-tariff-name';

/** A tariff as its file has it: the same, with every name of ours in words. */
export function tariffInWords(tariff: Tariff): Tariff<string> {
  const { seasons, demand, riders, taxes, export: sold } = tariff;
  const inWords =
    sold.rule === 'net-billing' ? { ...sold, seasons: sold.seasons.map(saidSeason) } : sold;
  return {
    ...tariff,
    name: sayTariffName(tariff.name),
    seasons: seasons.map(saidSeason),
    demand: demand?.map(said),
    riders: riders?.map(said),
    taxes: taxes?.map(said),
    export: inWords,
  };
}

const saidSeason = (season: TariffSeason): TariffSeason<string> => ({
  ...said(season),
  periods: season.periods.map(said),
});

const said = <T extends { readonly name: TariffName }>(
  part: T,
): Omit<T, 'name'> & { readonly name: string } => ({
  ...part,
  name: sayTariffName(part.name),
});
