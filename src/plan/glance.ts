import type { QuestionId } from '#compiled/question-ids.js';
import { advise } from '../advice/advise';
import type { Tariff } from '../bill/tariff/tariff';
import { widthsOf } from '../home/build-home';
import type { Home } from '../home/home';
import { World } from '../home/world';
import type { Answers } from '../interview/answers';
import { besideTariff } from '../interview/beside-tariff';
import type { Interview } from '../interview/question';
import { isSource } from '../kinds/ask-traits';
import type { RouteKind } from '../kinds/route-kind';
import { traitsOf } from '../kinds/route-traits';
import type { Figure } from '../quantity/figure';
import { allRoutes } from '../routes/all-routes';
import type { Route } from '../routes/route';
import { missingForAdvice } from './floor-of-answers';
import { homeFromAnswers } from './home-from-answers';

/** Drawn years behind the glance: the first of the plan's hundred. */
export const GLANCE_YEARS = 5;
/** No age of a figure counts in a glance, so neither does the day. */
const ANY_DAY = '2026-01-01';

/** The plan so far, as the pane beside the question shows it: figures and ids, and names the plan gives. */
export interface Glance {
  /** Questions without whose answers nothing is advised; then there is no route. */
  readonly missing: readonly QuestionId[];
  readonly route: GlanceRoute | null;
  readonly goalHours: Figure;
  /** Somebody depends on a powered device, or nobody knows. */
  readonly lifeSupport: Home['lifeSupport'];
}

export interface GlanceRoute {
  readonly kind: RouteKind;
  readonly title: string;
  /** Something is bought; false where getting ready is all that is advised. */
  readonly isSource: boolean;
  readonly costUsd: Figure;
  /** Hours; null when no end is foreseen while the supply holds. */
  readonly hours: Figure | null;
  readonly reachesGoal: boolean;
  /** Names of what must run and is not carried. */
  readonly leavesOut: readonly string[];
  /** What has to be true before it works. */
  readonly ifs: readonly string[];
}

/** A quick look at the plan that these answers would give, from a few drawn years. */
export function glancer(
  whole: Interview,
  ownTariff: Tariff | null = null,
): (answers: Answers) => Glance {
  const interview = besideTariff(whole, ownTariff !== null);
  const widths = widthsOf(interview);
  return (answers) => {
    const home = homeFromAnswers(interview, answers, ANY_DAY);
    const { goalHours, lifeSupport } = home;
    const missing = missingForAdvice(home);
    if (missing.length > 0) return { missing, route: null, goalHours, lifeSupport };
    const routes = allRoutes(home, new World(home, GLANCE_YEARS), widths);
    const route = glanceRoute(home, advise(home, routes).route);
    return { missing, route, goalHours, lifeSupport };
  };
}

function glanceRoute(home: Home, route: Route): GlanceRoute {
  const { kind, title, costUsd, lasting, ifs } = route;
  const { hours, reachesGoal } = lasting;
  const left = new Set(route.leavesOut.filter((one) => one.must).map((one) => one.load));
  const leavesOut = home.loads.filter(({ id }) => left.has(id)).map(({ name }) => name);
  return {
    kind,
    title,
    isSource: isSource(traitsOf[kind]),
    costUsd,
    hours,
    reachesGoal,
    leavesOut,
    ifs,
  };
}
