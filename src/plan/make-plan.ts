import { advise, onlyReady } from '../advice/advise';
import { type Bank, bankOf } from '../advice/effect-of-answers';
import { hardestSeason } from '../advice/hardest-season';
import { advisedDoes, possibleIf } from '../advice/possible-if';
import { countsByKind } from '../advice/route-counts';
import type { Tariff } from '../bill/tariff/tariff';
import { widthsOf } from '../home/build-home';
import { livedHome } from '../home/measures/lived-home';
import { drawnYears } from '../home/weather/drawn-years';
import { WEATHER_SEED, WEATHER_YEARS } from '../home/weather/synthetic-years';
import type { Answers } from '../interview/answers';
import { besideTariff } from '../interview/beside-tariff';
import type { Interview } from '../interview/questions/question';
import { onceMade } from '../quantity/once-made';
import { allKinds, sizedKind } from '../routes/all-routes';
import type { Route } from '../routes/route';
import type { SizedKind } from '../routes/sized';
import { findings } from '../rules/find';
import { cautionsFor } from './cautions/cautions-for';
import { dangerToldIn } from './cautions/danger-told';
import { frontCautions } from './cautions/front-cautions';
import { touching } from './contradictions/touching';
import { electricalOf } from './electrical/electrical';
import { fuelToStore } from './fuel/fuel-to-store';
import { homeFromAnswers } from './home-from-answers';
import { jobOf } from './job';
import { comfortLost } from './ladder/comfort-lost';
import { ladderOf } from './ladder/ladder';
import { leavingPoint } from './leaving-point';
import { lifeFirst } from './life-first';
import { moneyOf } from './money/money-of';
import { outlookOf } from './outlook';
import type { Plan } from './plan';
import { healthFirst } from './ride-through/health-first';
import { walkLadder } from './ride-through/ladder-walk';
import { rideThroughOf } from './ride-through/ride-through-of';
import { addOnsOf } from './steps/add-ons';
import { electricianFor, electricianPoints } from './steps/electrician-points';
import { nextSteps } from './steps/next-steps';
import { toCall } from './steps/to-call';
import { assumptionsOf } from './sureness/assumptions';
import { undecidedOf } from './sureness/floor-of-answers';
import { grownOld } from './sureness/grown-old';
import { sourcesOf } from './sureness/sources';
import { whyDraft } from './sureness/why-draft';
import { worthFindingOut } from './sureness/worth-finding-out';
import { waysOfLiving } from './ways/ways-of-living';
import { whatIsThere } from './what-is-there/what-is-there';
import { willNotDo } from './will-not-do';

/**
 * The whole plan of a home from its answers, each of its parts worked out; what could go (`advice.waysOn`) waits for whoever
 * reads it. The arguments are those of `planAsAsked`.
 */
export function makePlan(...asked: Parameters<typeof planAsAsked>): Plan {
  const plan = planAsAsked(...asked);
  // Each part is looked at once.
  void Object.values(plan);
  return plan;
}

/**
 * The plan of a home from its answers, its slowest parts worked out when they are asked for first. The same answers and
 * day give the same plan, to the byte.
 * @param asOf the day ages are counted from, YYYY-MM-DD
 * @param years of weather to draw; fewer make the odds rougher and the plan quicker
 * @param ownTariff the household's own tariff, which goes before its answers about prices
 * @param bankFor what single answers are tried with, of that interview and day: who makes several plans keeps one, so
 * that nothing is tried twice
 */
export function planAsAsked(
  whole: Interview,
  answers: Answers,
  asOf: string,
  years = WEATHER_YEARS,
  ownTariff: Tariff | null = null,
  bankFor: (interview: Interview, asOf: string) => Bank = bankOf,
): Plan {
  const interview = besideTariff(whole, ownTariff !== null);
  const home = homeFromAnswers(interview, answers, asOf);
  const widths = widthsOf(interview);
  const drawn = drawnYears(home, years);
  const kinds = allKinds(home, drawn, widths);
  const undecided = undecidedOf(interview, home);
  const advice =
    undecided.length > 0
      ? onlyReady(kinds)
      : advise(home, drawn, kinds, (kind, lived, on) => sizedKind(kind, lived, on, widths));
  const routes = withAdvised(kinds, advice.route);
  lookAtHours(routes);
  const advised = advisedDoes(home, advice.route);
  const planned = { interview, answers, asOf, widths, home, routes, advised };
  const lived = livedHome(home, advice.route.way);
  const own = findings(home, [advice.route.kind]);
  const lost = comfortLost(lived, advice.route);
  const cautions = cautionsFor(home, advice, lost);
  const toFindOut = onceMade(() =>
    worthFindingOut({ bank: bankFor(interview, asOf), answers, home, advice, cautions }),
  );
  const answered = new Set(Object.keys(answers));
  const outlook = outlookOf(home);
  const possible = onceMade(() => (undecided.length > 0 ? [] : possibleIf(planned)));
  const found = electricalOf(home, answers, { route: advice.route, routes, ownTariff });
  const settling = touching(home, found.toSettle, advice, possible);
  const electrical = { ...found, toSettle: settling.toSettle };
  const draftBecause = whyDraft(home, interview, electrical.toSettle);
  const fuel = fuelToStore(home, advice);
  const addOns = addOnsOf(lived, advice.route, cautions);
  const season = hardestSeason(home);
  const steps = ladderOf(lived, advice.route);
  const ladder = onceMade(() => walkLadder(home, drawn, advice.route, steps, season));
  const ride = onceMade(() =>
    rideThroughOf(home, drawn, advice, { all: routes, ladder: ladder().variant }),
  );
  const money = onceMade(() =>
    moneyOf({ home, ownTariff, drawn, routes, advice, outlook, rideThrough: ride() }),
  );
  const next = onceMade(() =>
    nextSteps({
      home,
      advice,
      cautions,
      toFindOut: toFindOut(),
      electrical,
      fuelToStore: fuel,
      addOns,
      possibleIf: possible(),
    }),
  );
  const ways = onceMade(() => waysOfLiving(home, drawn, advice, ride()));
  const sources = onceMade(() => sourcesOf(home, routes, cautions, money()));
  return {
    name: home.name,
    asOf,
    seed: WEATHER_SEED,
    weatherYears: years,
    state: draftBecause.length > 0 ? 'draft' : 'complete',
    draftBecause,
    danger: dangerToldIn(interview, answers),
    undecided,
    jobTold: home.facts.asked('must-run'),
    job: jobOf(home),
    home,
    mustRun: home.loads.filter((load) => load.rank === 'must'),
    billCheck: home.billCheck,
    outlook,
    routes,
    counts: countsByKind(home, routes),
    advice,
    get possibleIf() {
      return possible();
    },
    get rideThrough() {
      return ride();
    },
    get money() {
      return money();
    },
    lifeFirst: lifeFirst(home),
    healthFirst: healthFirst(home, drawn, advice.route, season),
    whatIsThere: whatIsThere(home, routes),
    get waysOfLiving() {
      return ways();
    },
    comfortLost: lost,
    willNotDo: willNotDo(home, advice, fuel),
    cautions,
    frontCautions: frontCautions(home, cautions, own),
    electricianFor: electricianFor(advice.route, own),
    toCall: toCall(home, advice.route),
    electrician: electricianPoints(home, advice.route, own),
    electrical,
    settleIfEver: settling.settleIfEver,
    addOns,
    fuelToStore: fuel,
    get ladder() {
      return ladder().steps;
    },
    get toFindOut() {
      return toFindOut();
    },
    assumptions: assumptionsOf(interview, home, answered),
    get nextSteps() {
      return next();
    },
    leavingPoint: leavingPoint(home),
    grownOld: grownOld(asOf),
    get sources() {
      return sources();
    },
  };
}

/** Counted now, for a plan tells of all: the series they are counted from are let go. */
function lookAtHours(routes: readonly Route[]): void {
  for (const { lasting } of routes) void lasting.hours;
}

/** Every kind at the size of the plan, the advised one at the size advised. */
const withAdvised = (kinds: readonly SizedKind[], advised: Route): Route[] =>
  kinds.map(({ route }) => (route.kind === advised.kind ? advised : route));
