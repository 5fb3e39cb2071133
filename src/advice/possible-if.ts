import type { Widths } from '../home/answer-figure';
import { buildHome } from '../home/build-home';
import { Facts } from '../home/facts';
import type { Home } from '../home/home';
import { drawnYears } from '../home/weather/drawn-years';
import type { Answers } from '../interview/answers';
import type { Interview } from '../interview/questions/question';
import { resolve } from '../interview/questions/resolve';
import type { RouteKind } from '../kinds/route-kind';
import { sizedKind } from '../routes/all-routes';
import { budgetUsd } from '../routes/budget';
import { onceStored } from '../routes/fuel/once-stored';
import type { Route } from '../routes/route';
import type { Stop } from '../routes/stops/stop';
import {
  type ConditionCode,
  type Settler,
  type StopCode,
  stopKindOf,
} from '../routes/stops/stop-codes';
import { findings } from '../rules/find';
import type { Finding } from '../rules/rule';
import { practice } from '../tables/practice-figures';
import { carefulHours, shareOfJob } from './beside';
import { littleAboveUsd } from './little-above';
import { putIn } from './put-in';
import { type CountsByKind, countsByKind } from './route-counts';
import { doesWholeJob } from './whole-job';

/** What would have to be true, and who settles whether it is. */
export interface Condition {
  readonly code: ConditionCode;
  readonly settles: Settler;
}

/**
 * What it would bring beside the route advised: more of the job; all that must run for the time asked, on a hard day too; that for less
 * money; as much as it does, for clearly less; or no more of the job, only another way to do it.
 */
export type IfGain = 'more' | 'all' | 'all-for-less' | 'as-much-for-less' | 'other-way';

/** What the route advised does, to hold others against. */
export interface AdvisedDoes {
  /** Likely price, $. */
  readonly usd: number;
  /** Share of the job, 0 to 1. */
  readonly share: number;
  /** Hours by the careful count, no further than the goal. */
  readonly carefulHours: number;
}

export const advisedDoes = (home: Home, route: Route): AdvisedDoes => ({
  usd: route.costUsd.value,
  share: shareOfJob(home, route),
  carefulHours: carefulHours(home, route),
});

/** Routes that are closed by nothing but these conditions, sized and priced as if they held. Never anything to buy yet. */
export interface PossibleIf {
  readonly conditions: readonly Condition[];
  /** Drawn years the sizes go by. */
  readonly years: number;
  /** The home as it would be then. */
  readonly home: Home;
  /** The one that does most of the job first. */
  readonly routes: readonly Route[];
  /** What papers say of each of these beside. */
  readonly counts: CountsByKind;
  readonly gain: IfGain;
  /** One of those that bring the gain is within the money told, or a little above; where life may hang on it, whatever it costs. */
  readonly payable: boolean;
  /** What can kill and comes with these routes: said wherever they are. */
  readonly cautions: readonly Finding[];
}

/** What a plan has already worked out of a home. */
export interface Planned {
  readonly interview: Interview;
  readonly answers: Answers;
  readonly asOf: string;
  readonly widths: Widths;
  readonly home: Home;
  readonly routes: readonly Route[];
  readonly advised: AdvisedDoes;
}

/** Drawn years that sizes on a condition go by: they are for weighing, not for buying. */
const IF_YEARS = 5;

/** The routes possible on a condition, those with the fewest conditions first. A route that anything closes for good is none. */
export function possibleIf(planned: Planned): PossibleIf[] {
  const closed = planned.routes.filter(
    ({ verdict, stops }) => verdict === 'cannot' && stops.every(({ code }) => canChange(code)),
  );
  if (closed.length === 0) return [];
  const groups = new Map<string, { codes: ConditionCode[]; home: Home; routes: Route[] }>();
  for (const { kind, stops } of closed) {
    const found = openedUp(planned, kind, stops);
    if (found === null) continue;
    const key = [...found.codes].sort().join();
    const group = groups.get(key) ?? { codes: found.codes, home: found.home, routes: [] };
    group.routes.push(found.route);
    groups.set(key, group);
  }
  return [...groups.values()]
    .sort((a, b) => a.codes.length - b.codes.length)
    .map(({ codes, home, routes }) => ({
      conditions: codes.map((code) => ({ code, settles: stopKindOf(code).opens!.settles })),
      years: IF_YEARS,
      home,
      routes: [...routes].sort(
        (a, b) => shareOfJob(home, b) - shareOfJob(home, a) || a.costUsd.value - b.costUsd.value,
      ),
      counts: countsByKind(home, routes),
      ...gainAndPrice(home, routes, planned.advised),
      cautions: deadly(home, routes),
    }));
}

/** So much more of the job is more of it. Our judgement. */
const MORE_SHARE = 0.05;

/** What they bring, and whether any of those that bring it can be paid. */
function gainAndPrice(
  home: Home,
  routes: readonly Route[],
  advised: AdvisedDoes,
): Pick<PossibleIf, 'gain' | 'payable'> {
  const { gain, by } = gainOf(home, routes, advised);
  const most = littleAboveUsd(budgetUsd(home));
  const payable = home.lifeSupport !== 'no' || by.some(({ costUsd }) => costUsd.value <= most);
  return { gain, payable };
}

function gainOf(
  home: Home,
  routes: readonly Route[],
  advised: AdvisedDoes,
): { gain: IfGain; by: readonly Route[] } {
  const whole = routes.filter((route) =>
    doesWholeJob(home, onceStored(home, route)?.route ?? route),
  );
  if (whole.length > 0) {
    const less = whole.filter(({ costUsd }) => costUsd.value < advised.usd);
    return less.length > 0 ? { gain: 'all-for-less', by: less } : { gain: 'all', by: whole };
  }
  const more = routes.filter((route) => shareOfJob(home, route) > advised.share + MORE_SHARE);
  if (more.length > 0) return { gain: 'more', by: more };
  const asMuch = routes.filter((route) => asMuchForLess(home, route, advised));
  return asMuch.length > 0
    ? { gain: 'as-much-for-less', by: asMuch }
    : { gain: 'other-way', by: [] };
}

const asMuchForLess = (home: Home, route: Route, advised: AdvisedDoes): boolean =>
  route.costUsd.value < (1 - practice('price-apart-share')) * advised.usd &&
  shareOfJob(home, route) >= advised.share &&
  carefulHours(home, route) >= advised.carefulHours;

/** Most conditions looked for one behind the other: beyond, the route is too far off to speak of. Our judgement. */
const MOST_ROUNDS = 3;

/** The route with all that closes it put right; what then comes up behind it is put right too. Null where something cannot be. */
function openedUp(
  planned: Planned,
  kind: RouteKind,
  stops: readonly Stop[],
): { codes: ConditionCode[]; home: Home; route: Route } | null {
  let closed: readonly Stop[] = stops;
  const codes: ConditionCode[] = [];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    for (const { code } of closed) {
      if (!canChange(code) || codes.includes(code)) return null;
      codes.push(code);
    }
    const home = homeIf(planned, codes);
    const drawn = drawnYears(home, IF_YEARS);
    const route = sizedKind(kind, home, drawn, planned.widths)?.route ?? null;
    if (route === null) return null;
    if (route.verdict !== 'cannot') return { codes, home, route };
    closed = route.stops;
  }
  return null;
}

const canChange = (code: StopCode): code is ConditionCode => stopKindOf(code).opens !== null;

function homeIf(
  { interview, answers, asOf, widths, home }: Planned,
  codes: readonly ConditionCode[],
): Home {
  const known = resolve(interview.questions, putIn(answers, codes), 'assume');
  return buildHome(new Facts(known), widths, asOf, home.site);
}

/** Deadly cautions that these routes bring, beyond those of the home as it is. */
function deadly(home: Home, routes: readonly Route[]): Finding[] {
  const anyway = new Set(findings(home, ['preparation']).map(({ id }) => id));
  return findings(
    home,
    routes.map(({ kind }) => kind),
  ).filter(({ id, severity }) => severity === 5 && !anyway.has(id));
}

/**
 * The one to find out before money is spent: the first that would do more of the job, or it for less, for a price that can be paid; null
 * where none would.
 */
export const firstWorth = (all: readonly PossibleIf[]): PossibleIf | null =>
  all.find(({ gain, payable }) => gain !== 'other-way' && payable) ?? null;
