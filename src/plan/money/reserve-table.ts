import { loadsIn } from '../../advice/ride/route-loads';
import { reserveCost } from '../../bill/dispatch/reserve-cost';
import type { Home } from '../../home/home';
import { seasonOf } from '../../home/season-of';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { chargeForEveryStart, chargeToStartWith } from '../../outage/every-start';
import { monthOfHour } from '../../outage/month-of-hour';
import { netOf } from '../../routes/battery-hours';
import type { Route } from '../../routes/route';
import type { BetweenOutages } from './between-outages';

/** One level of charge kept for outages all year: what it saves and what it rides through. */
export interface ReserveRow {
  /** Share of the battery kept for outages, 0 to 1. */
  readonly share: number;
  readonly keptKwh: number;
  /** $ a year off the bill by the battery, wear taken off; and given up against keeping nothing. */
  readonly savings: number;
  readonly cost: number;
  /** Share of outages of the goal's length ridden through that find the battery at just this level, 0 to 1. */
  readonly odds: number;
  readonly chosen: boolean;
}

/** The five levels shown. */
const shares = [0, 0.25, 0.5, 0.75, 1];
/** Weather years looked at for the odds here: enough for a whole percent. */
const YEARS = 12;

/** What keeping charge for outages costs a year against the odds it buys, the household's choice marked. */
export function reserveTable(
  given: { home: Home; drawn: SyntheticYears; route: Route },
  between: BetweenOutages,
): ReserveRow[] {
  const { input, strategy } = between;
  if (input === null || strategy === 'wait') return [];
  const chosen = Math.min(1, Math.max(...between.keptKwh) / input.battery.usableKwh);
  const levels = reserveCost(input, { strategy, shares: sharesWith(chosen), chosen });
  const odds = oddsAt(
    given,
    levels.map((level) => level.keptKwh),
  );
  return levels.map((level, i) => ({ ...level, odds: odds[i]! }));
}

/** The levels with the household's choice in place of the nearest between none and all. */
function sharesWith(chosen: number): number[] {
  if (shares.includes(chosen)) return shares;
  const between = shares.slice(1, -1);
  const distance = (share: number) => Math.abs(share - chosen);
  const nearest = between.reduce((a, b) => (distance(b) < distance(a) ? b : a));
  return shares.map((share) => (share === nearest ? chosen : share));
}

/** Share of the start hours in the months of the goal's season that each charge is enough for. */
function oddsAt(
  { home, drawn, route }: { home: Home; drawn: SyntheticYears; route: Route },
  charges: readonly number[],
): number[] {
  const inverterKw = (route.power?.continuousWatts ?? 0) / 1000;
  const loads = loadsIn(home, route, 'must') ?? [];
  const net = netOf(drawn, loads, inverterKw, route.solarKw ?? 0, YEARS);
  const capKwh = route.usableKwh ?? 0;
  const needed = chargeForEveryStart(net, Math.round(home.goalHours.value), capKwh);
  const counts = charges.map(() => 0);
  let starts = 0;
  for (let s = 0; s < needed.thresholdKwh.length; s++) {
    if (!home.goalSeasons.includes(seasonOf(monthOfHour(s)))) continue;
    starts++;
    const kwh = chargeToStartWith(needed.thresholdKwh[s]!, needed.unavoidableKwh[s]!, capKwh);
    if (kwh === null) continue;
    for (let i = 0; i < charges.length; i++) if (kwh <= charges[i]! + 1e-9) counts[i]!++;
  }
  return counts.map((count) => (starts === 0 ? 0 : count / starts));
}
