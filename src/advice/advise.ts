import type { Home } from '../home/home';
import { healthHangs } from '../home/people/health-devices';
import type { SyntheticYears } from '../home/weather/synthetic-years';
import { isSource } from '../kinds/ask-traits';
import { traitsOf } from '../kinds/route-traits';
import { laterUsd } from '../routes/budget';
import { carriesAllMust, mustLoads } from '../routes/must-carried';
import type { Route } from '../routes/route';
import type { SizedKind } from '../routes/sized';
import type { Advice } from './advice';
import { besideOf } from './beside';
import { carriedBy } from './carried';
import { firstBuy } from './first-buy';
import { givesPower } from './list/candidate';
import { tooDear } from './list/choose';
import { isEnough } from './list/enough';
import { linesOf, type Ranked, rank } from './list/list-of';
import { neighborsOf } from './list/neighbors';
import { otherEnough } from './list/other-enough';
import type { SizeKind } from './list/source';
import type { Weighed } from './list/unbeaten';
import type { Reason, ReasonCode } from './reason';
import { findWaysOn } from './ways-on/find-ways-on';
import type { OneRoom } from './ways-on/ways-on';

/**
 * The route to advise, off the list of what nothing beats in money and in odds of the goal: the cheapest within the money told that
 * is enough; where none is, the one that comes about as near as any that can be paid; where the money buys none, getting ready.
 * Where no money was told, none is too dear.
 * @param seeksWaysOn where nothing within the money is enough, what would be is worked out too
 * @param sizeKind sizes a kind for the thrifty way of living; null: only the usual way is weighed
 */
export function advise(
  home: Home,
  drawn: SyntheticYears,
  kinds: readonly SizedKind[],
  sizeKind: SizeKind | null = null,
  seeksWaysOn = sizeKind !== null,
): Advice {
  const ranked = rank(home, drawn, kinds, sizeKind);
  const { lines, advised } = linesOf(home, ranked);
  const able = kinds
    .map((one) => one.route)
    .filter((r) => r.verdict !== 'cannot' && isSource(traitsOf[r.kind]) && r.carries.length > 0);
  const route = advised === null ? readyOf(kinds) : lines[advised]!.route!;
  const waysOn =
    sizeKind === null || !seeksWaysOn ? null : findWaysOn(home, drawn, ranked, sizeKind);
  const { reaching, chosen } = ranked;
  const whole = reaching === null || reaching === chosen ? null : reaching.sized.whole();
  return {
    route,
    reason: reasonOf(home, ranked, able, waysOn?.oneRoom ?? null),
    carried: route.carries.length === 0 ? null : carriedBy(home, route),
    beside: besideOf(home, able, route),
    wholeJob: chosen !== null && isEnough(chosen) ? null : whole,
    list: lines,
    careful: healthHangs(home),
    advised,
    waysOn,
    firstBuy: firstBuy(home, ranked),
    neighbors: neighborsOf(lines, advised),
  };
}

/** Too little is known to advise a source: getting ready, and nothing laid beside it. */
export function onlyReady(kinds: readonly SizedKind[]): Advice {
  return {
    route: readyOf(kinds),
    reason: {
      code: 'too-little-told',
      budgetUsd: null,
      laterUsd: 0,
      cheapest: null,
      tooDear: null,
      lessPluggedIn: false,
      thriftily: false,
      oneRoom: null,
      others: [],
    },
    carried: null,
    beside: [],
    wholeJob: null,
    list: [],
    careful: true,
    advised: null,
    waysOn: null,
    firstBuy: null,
    neighbors: null,
  };
}

const readyOf = (kinds: readonly SizedKind[]): Route =>
  kinds.map((one) => one.route).find((one) => !isSource(traitsOf[one.kind]))!;

function reasonOf(
  home: Home,
  { all, chosen, budgetUsd }: Ranked,
  able: readonly Route[],
  oneRoom: OneRoom | null,
): Reason {
  const cheapest = [...able].sort((a, b) => a.costUsd.value - b.costUsd.value)[0] ?? null;
  const dear = tooDear(all, budgetUsd, chosen);
  return {
    code: chosen === null ? withoutSource(home, cheapest, budgetUsd) : codeOf(home, chosen),
    budgetUsd,
    laterUsd: laterUsd(home),
    cheapest:
      cheapest === null
        ? null
        : { kind: cheapest.kind, called: cheapest.called, usd: cheapest.costUsd.value },
    tooDear: dear === null || chosen === null ? null : besideChosen(dear, chosen),
    thriftily: chosen?.living.way === 'thrifty',
    lessPluggedIn: chosen !== null && servesForOneJob(chosen, able),
    oneRoom: oneRoom?.doesItWithin ? { heats: oneRoom.heats, cools: oneRoom.cools } : null,
    others: otherEnough(all, chosen),
  };
}

function besideChosen({ sized, usd }: Weighed, chosen: Weighed): Reason['tooDear'] {
  const { kind, called } = sized.route;
  return { kind, called, larger: kind === chosen.counted.kind, usd, apartUsd: usd - chosen.usd };
}

function withoutSource(home: Home, cheapest: Route | null, budgetUsd: number | null): ReasonCode {
  if (mustLoads(home).length === 0) return 'nothing-named';
  if (cheapest === null) return 'no-source-open';
  const fits = budgetUsd === null || cheapest.costUsd.value <= budgetUsd;
  return fits ? 'none-worth-it' : 'no-source-in-budget';
}

function codeOf(home: Home, chosen: Weighed): ReasonCode {
  if (!givesPower(chosen)) return 'no-power-needed';
  const all = carriesAllMust(home, chosen.counted);
  if (isEnough(chosen)) return all ? 'cheapest-enough' : 'cheapest-enough-but-off';
  return all ? 'nearest-all' : 'nearest-part';
}

/** Not enough with everything on, it stands where a battery for one job of its size would. */
function servesForOneJob(chosen: Weighed, able: readonly Route[]): boolean {
  const { counted } = chosen;
  const one = able.find((route) => traitsOf[route.kind].oneJob);
  return (
    one !== undefined &&
    !isEnough(chosen) &&
    traitsOf[counted.kind].battery === 'plug-in' &&
    !traitsOf[counted.kind].oneJob &&
    one.carries.length < counted.carries.length &&
    one.carries.every((id) => counted.carries.includes(id))
  );
}
