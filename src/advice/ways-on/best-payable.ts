import type { Home } from '../../home/home';
import { drawnYears } from '../../home/weather/drawn-years';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { hardestSeason } from '../hardest-season';
import { rank } from '../list/list-of';
import type { SizeKind } from '../list/source';
import type { Weighed } from '../list/unbeaten';
import { weighingOf, worthOf } from '../list/value';
import { SizeOdds } from '../ride/size-odds';

/** Drawn years in which homes are tried, to keep a plan quick; what is found is counted in all of them. */
const TRY_YEARS = 5;

/** Few of the years, for homes that are only tried. */
export const fewOf = (home: Home, drawn: SyntheticYears): SyntheticYears =>
  drawnYears(home, Math.min(TRY_YEARS, drawn.years));

/** The one that would be advised to a home within its money; null where that buys none. */
export const bestPayable = (home: Home, few: SyntheticYears, sizeKind: SizeKind): Weighed | null =>
  rank(home, few, null, sizeKind, true).chosen;

/** What was found in few years, counted in all. */
export function countedIn(home: Home, drawn: SyntheticYears, found: Weighed): Weighed {
  const { living } = found;
  const odds = new SizeOdds(living.home, drawn, hardestSeason(home));
  return { ...found, value: worthOf(found, weighingOf(living.home, []), odds) };
}
