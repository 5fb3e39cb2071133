import { advise, onlyReady } from '../../advice/advise';
import { hardestSeason } from '../../advice/hardest-season';
import { remembered } from '../../advice/remembered';
import { goalShare } from '../../advice/ride/goal-share';
import { TRIAL_YEARS } from '../../advice/trial';
import { buildHome, widthsOf } from '../../home/build-home';
import { Facts } from '../../home/facts';
import type { Home, Season } from '../../home/home';
import { livedHome } from '../../home/measures/lived-home';
import { siteOf } from '../../home/site';
import { drawnYears } from '../../home/weather/drawn-years';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { besideTariff } from '../../interview/beside-tariff';
import type { Interview } from '../../interview/questions/question';
import { resolve } from '../../interview/questions/resolve';
import type { SizeStep, Tried } from '../../interview/what-if/tried';
import { allKinds, sizedKind } from '../../routes/all-routes';
import { onceStored } from '../../routes/fuel/once-stored';
import type { Route } from '../../routes/route';
import type { SizedKind } from '../../routes/sized';
import { cautionsFor } from '../cautions/cautions-for';
import { comfortLost } from '../ladder/comfort-lost';
import { healthFirst } from '../ride-through/health-first';
import { refilledShare } from '../ride-through/variants';
import { undecidedOf } from '../sureness/floor-of-answers';
import { aboutFacts } from './about-facts';
import { factsOf, lastsOf } from './facts-of';
import type { OddsFact, PlanFacts } from './plan-facts';
import { type SizeBeside, sizeBeside } from './size-beside';

/** Quick facts of answers; null where the size tried is not to be had. */
export type QuickPlan = (tried: Tried) => PlanFacts | null;

/**
 * What a plan of these answers would say, by the same advice from the first few of its drawn years: quick enough to follow a key.
 * Hours and odds are rounded, for so few years know no better. The weather of a place is drawn once.
 */
export function quickPlans(
  whole: Interview,
  asOf: string,
  hasOwnTariff: boolean,
  years = TRIAL_YEARS,
): QuickPlan {
  const interview = besideTariff(whole, hasOwnTariff);
  const widths = widthsOf(interview);
  const siteAt = remembered((known) => siteOf(new Facts(known)));
  return ({ answers, size }) => {
    const known = resolve(interview.questions, answers, 'assume');
    const home = buildHome(new Facts(known), widths, asOf, siteAt(known));
    const drawn = drawnYears(home, years);
    const sizeOf = (kind: Route['kind'], lived: Home, on: SyntheticYears) =>
      sizedKind(kind, lived, on, widths);
    const kinds = allKinds(home, drawn, widths);
    const undecided = undecidedOf(interview, home).length > 0;
    const advice = undecided ? onlyReady(kinds) : advise(home, drawn, kinds, sizeOf, false);
    const season = hardestSeason(home);
    const { route } = advice;
    const cautions = cautionsFor(home, advice, comfortLost(livedHome(home, route.way), route));
    const found = { home, season, drawnYears: years, undecided, cautions };
    const facts = (given: Route, step: SizeStep = 0) =>
      aboutFacts(
        factsOf({
          ...found,
          step,
          route: given,
          odds: oddsOf(home, drawn, given, season),
          refill: refillOf(home, drawn, given, season),
          health: healthFirst(home, drawn, given, season),
        }),
      );
    if (size === 0) return facts(route);
    const sized = kinds.find((one) => one.route.kind === route.kind)!;
    const lived: SizedKind | null =
      route.way === 'usual' ? sized : sizeOf(route.kind, livedHome(home, route.way), drawn);
    const beside =
      lived === null ? null : sizeBeside(home, drawn, lived, { route, season, step: size });
    if (beside === null) return null;
    return beside.code === 'route'
      ? facts(beside.route, size)
      : stepFacts(home, facts(route, size), beside);
  };
}

/** Shares of the goal, as the plan counts them; null where nothing is carried. */
function oddsOf(home: Home, drawn: SyntheticYears, route: Route, season: Season): OddsFact | null {
  if (route.carries.length === 0 || route.verdict === 'cannot') return null;
  const lived = livedHome(home, route.way);
  const share = (route: Route) => goalShare(lived, drawn, route, { season, careful: false });
  const stored = onceStored(home, route);
  return { today: share(route), stored: stored === null ? null : share(stored.route) };
}

function refillOf(home: Home, drawn: SyntheticYears, route: Route, season: Season) {
  if (route.generator === null || route.carries.length === 0) return null;
  const share = refilledShare(livedHome(home, route.way), drawn, route, season);
  return share === null ? null : { everyDays: home.facts.number('fuel-refill-days')!, share };
}

/** Another generator under the same loads and fuel. */
function stepFacts(
  home: Home,
  facts: PlanFacts,
  { costUsd, atSize, odds, oddsOnceStored }: Extract<SizeBeside, { code: 'step' }>,
): PlanFacts {
  const { low, value, high } = costUsd;
  return aboutFacts({
    ...facts,
    size: { ...facts.size, watts: null },
    usd: { low, likely: value, high },
    ...(atSize === null
      ? { lasts: { code: 'not-counted' } }
      : {
          lasts: lastsOf(home, atSize),
          reachesGoal: (onceStored(home, atSize)?.route ?? atSize).lasting.reachesGoal,
        }),
    odds: { today: odds ?? 0, stored: oddsOnceStored },
    refill: null,
    devices: null,
  });
}
