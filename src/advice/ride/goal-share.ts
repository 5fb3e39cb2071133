import type { Home, Season } from '../../home/home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import type { Route } from '../../routes/route';
import { loadsIn } from './route-loads';
import { SizeOdds } from './size-odds';

/** Share of outages of the goal's length ridden through with what must keep running, likely or careful, from a sample of starts. */
export function goalShare(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  { season, careful }: { season: Season; careful: boolean },
): number {
  const loads = loadsIn(home, route, 'must') ?? [];
  return oddsOf(home, drawn, season).sampledShare({ route, loads, careful });
}

const kept = new WeakMap<
  SyntheticYears,
  Map<Season, { readonly home: Home; readonly odds: SizeOdds }>
>();

/** A plan asks for the shares of many routes in a row: hours cut for one serve the others. Of one home at a time, to keep memory small. */
function oddsOf(home: Home, drawn: SyntheticYears, season: Season): SizeOdds {
  const ofDrawn = kept.get(drawn) ?? new Map();
  kept.set(drawn, ofDrawn);
  const known = ofDrawn.get(season);
  if (known?.home === home) return known.odds;
  const odds = new SizeOdds(home, drawn, season);
  ofDrawn.set(season, { home, odds });
  return odds;
}
