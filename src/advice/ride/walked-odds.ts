import { seasonMonths } from '../../outage/season';
import { sampleOutages } from '../../outage/walk/sampled-odds';
import type { Odds } from './odds';
import type { Walkable } from './walkable';

/** Odds of every length from outages walked hour by hour, one start in `everyHours`, with their standard errors. */
export function walkedOdds(
  { system, record, startKwh, months }: Walkable,
  lengths: readonly number[],
  everyHours: number,
): Odds[] {
  const sampled = sampleOutages({
    system,
    record,
    startKwh,
    lengths,
    everyHours,
    seasonMonths: seasonMonths(months),
    untilFailure: true,
  });
  return sampled.map((one) => ({
    hours: one.hours,
    year: one.all?.share ?? 0,
    months: one.months.map((month) => month?.share ?? null),
    season: one.season?.share ?? 0,
    standardError: one.season?.standardError ?? null,
  }));
}

/** Share of one length, of outages that start in the season, and its standard error. */
export interface SeasonShare {
  readonly share: number;
  readonly standardError: number | null;
}

/** The same for one length and the season alone: a third of the walks, or fewer. */
export function walkedShare(
  { system, record, startKwh, months }: Walkable,
  hours: number,
  everyHours: number,
): SeasonShare {
  const [one] = sampleOutages({
    system,
    record,
    startKwh,
    lengths: [hours],
    everyHours,
    seasonMonths: seasonMonths(months),
    onlySeason: true,
    untilFailure: true,
  });
  return { share: one!.season?.share ?? 0, standardError: one!.season?.standardError ?? null };
}
