import type { QuestionId } from '#compiled/question-ids.js';
import { type LiveAdvice, liveAdvice } from '../../advice/live-advice';
import {
  type AdvisedDoes,
  advisedDoes,
  firstWorth,
  type PossibleIf,
} from '../../advice/possible-if';
import type { Trial } from '../../advice/trial';
import type { Home } from '../../home/home';
import type { LoadName } from '../../home/loads/load-name';
import { livedHome } from '../../home/measures/lived-home';
import { isSource } from '../../kinds/ask-traits';
import type { RouteKind } from '../../kinds/route-kind';
import type { RouteTitle } from '../../kinds/route-title';
import { traitsOf } from '../../kinds/route-traits';
import type { Figure } from '../../quantity/figure';
import { withinBudgetUsd } from '../../routes/budget';
import { onceStored } from '../../routes/fuel/once-stored';
import type { Route } from '../../routes/route';
import type { If } from '../../routes/stops/condition';
import { sayStation } from '../../tables/place/say-station';
import { missingForAdvice } from '../sureness/floor-of-answers';

/** The plan so far, as the pane beside the question shows it: figures and ids, and names the plan gives. */
export interface Glance {
  /** Questions without whose answers nothing is advised; then there is no route. */
  readonly missing: readonly QuestionId[];
  readonly route: GlanceRoute | null;
  /** What would have to be true for more; null where the route does the job, or nothing would. */
  readonly possible: PossibleIf | null;
  /** The town whose weather counts, read back where a ZIP code was told. */
  readonly nearTown: string | null;
  readonly goalHours: Figure;
  /** Somebody depends on a powered device, or nobody knows. */
  readonly lifeSupport: Home['lifeSupport'];
}

export interface GlanceRoute {
  readonly kind: RouteKind;
  readonly called: RouteTitle;
  /** Something is bought; false where getting ready is all that is advised. */
  readonly isSource: boolean;
  /** The cheapest source that carries something, $, where nothing is bought because it is above the money told; else null. */
  readonly sourceAboveUsd: number | null;
  readonly costUsd: Figure;
  /** Hours; null when no end is foreseen while the supply holds. */
  readonly hours: Figure | null;
  readonly reachesGoal: boolean;
  /** The same once the cans among its parts are filled; null where none are to be. */
  readonly stored: {
    readonly gallons: number;
    readonly hours: Figure;
    readonly reachesGoal: boolean;
  } | null;
  /** What must run and is not carried. */
  readonly leavesOut: readonly LoadName[];
  /** What has to be true before it works. */
  readonly ifs: readonly If[];
}

/** A quick look at the plan, from a trial of the answers on a few drawn years. */
export function glanceOf(
  trial: Trial,
  ifOf: (trial: Trial, advised: AdvisedDoes) => PossibleIf[],
): Glance {
  const { home } = trial;
  const { goalHours, lifeSupport } = home;
  const missing = missingForAdvice(home);
  const live = missing.length > 0 ? null : liveAdvice(trial);
  const route = live === null ? null : glanceRoute(trial, live.route);
  const possible = live === null ? null : possibleBeside(trial, live, ifOf);
  return { missing, route, possible, nearTown: nearTown(home), goalHours, lifeSupport };
}

/** As on the first page of the plan: not where life hangs on a device, for then other things come first. */
function possibleBeside(
  trial: Trial,
  live: LiveAdvice,
  ifOf: (trial: Trial, advised: AdvisedDoes) => PossibleIf[],
): PossibleIf | null {
  const { home } = trial;
  if (home.lifeSupport === 'yes' || live.reaches) return null;
  return firstWorth(ifOf(trial, advisedDoes(home, live.route)));
}

function nearTown({ facts, site }: Home): string | null {
  const [nearest] = site.place.stations;
  return facts.told('home-zip') && nearest !== undefined ? sayStation(nearest) : null;
}

function glanceRoute(trial: Trial, route: Route): GlanceRoute {
  const { home } = trial;
  const { kind, called, costUsd, lasting, ifs } = route;
  const { hours, reachesGoal } = lasting;
  const filled = onceStored(livedHome(home, route.way), route);
  const left = new Set(route.leavesOut.filter((one) => one.must).map((one) => one.load));
  const leavesOut = home.loads.filter(({ id }) => left.has(id)).map(({ called }) => called);
  return {
    kind,
    called,
    isSource: isSource(traitsOf[kind]),
    sourceAboveUsd: isSource(traitsOf[kind]) ? null : sourceAboveUsd(trial),
    costUsd,
    hours,
    reachesGoal,
    stored:
      filled === null
        ? null
        : {
            gallons: filled.gallons,
            hours: filled.route.lasting.hours!,
            reachesGoal: filled.route.lasting.reachesGoal,
          },
    leavesOut,
    ifs,
  };
}

/** Sizes are priced by what is likely, as the list is. */
function sourceAboveUsd({ home, kinds }: Trial): number | null {
  const prices = kinds
    .filter(({ route }) => isSource(traitsOf[route.kind]))
    .flatMap(({ sizes }) => sizes())
    .filter(({ route }) => route.carries.length > 0)
    .map(({ route }) => route.costUsd.value);
  const cheapestUsd = Math.min(...prices);
  return prices.length === 0 || withinBudgetUsd(home, cheapestUsd) ? null : cheapestUsd;
}
