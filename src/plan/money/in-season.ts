import type { Tariff, TariffSeason } from '../../bill/tariff';

const peakMonths: Readonly<Record<string, { from: string; to: string; rest: [string, string] }>> = {
  summer: { from: '06-01', to: '09-30', rest: ['10-01', '05-31'] },
  winter: { from: '12-01', to: '03-31', rest: ['04-01', '11-30'] },
};

/** The tariff with its peak in a part of the year only; in the rest those hours cost what all other hours do. */
export function inSeason(tariff: Tariff, choice: unknown): Tariff {
  const at = peakMonths[String(choice)];
  const all = tariff.seasons[0]!;
  const peakless = all.periods.filter((period) => period.name !== 'peak');
  if (at === undefined || peakless.length === all.periods.length) return tariff;
  const seasons: TariffSeason[] = [
    { ...all, name: `${choice}`, from: at.from, to: at.to },
    { ...all, name: 'rest of the year', from: at.rest[0], to: at.rest[1], periods: peakless },
  ];
  return { ...tariff, seasons };
}
