import interview from '#compiled/questions.js';
import type { Advice } from '../../src/advice/advice';
import { widthsOf } from '../../src/home/build-home';
import { Facts } from '../../src/home/facts';
import type { Home } from '../../src/home/home';
import { drawnYears } from '../../src/home/weather/drawn-years';
import type { SyntheticYears } from '../../src/home/weather/synthetic-years';
import type { Answer, Answers } from '../../src/interview/answers';
import { resolve } from '../../src/interview/questions/resolve';
import { routeKinds } from '../../src/kinds/route-kind';
import { electricalOf } from '../../src/plan/electrical/electrical';
import { leavingPoint } from '../../src/plan/leaving-point';
import { lifeFirst } from '../../src/plan/life-first';
import { makePlan } from '../../src/plan/make-plan';
import { moneyOf } from '../../src/plan/money/money-of';
import { tariffOf } from '../../src/plan/money/tariff-of';
import { outlookOf } from '../../src/plan/outlook';
import type { RouteRide } from '../../src/plan/ride-through/ride-through';
import type { RideThrough } from '../../src/plan/ride-through/ride-through-of';
import { whatIsThere } from '../../src/plan/what-is-there/what-is-there';
import { allRoutes } from '../../src/routes/all-routes';
import type { Route } from '../../src/routes/route';
import { findings } from '../../src/rules/find';
import { english } from '../../src/words/en';
import { sharedBank } from '../frozen-plans';
import { homeOfAnswers } from '../home-of-answers';

const ASOF = '2026-11-25';
const widths = widthsOf(interview);

/** Numbers, ids and yes or no below a value; words are left out, for a word may be the answer said back. */
function bare(value: unknown, skip: ReadonlySet<string>): unknown {
  if (typeof value === 'number') return Math.round(value * 1e6) / 1e6;
  if (typeof value === 'boolean' || value === null) return value;
  if (ArrayBuffer.isView(value)) return (value as unknown as { length: number }).length;
  if (Array.isArray(value)) return value.map((one) => bare(one, skip));
  if (value instanceof Facts) return undefined;
  if (typeof value === 'object') {
    return Object.fromEntries(
      Object.entries(value)
        .filter(([key]) => !skip.has(key))
        .map(([key, one]) => [key, bare(one, skip)]),
    );
  }
  return undefined;
}

const notSaid = new Set(['source', 'facts', 'restsOn', 'shape', 'climate', 'place', 'billYear']);

/** What is asked of this home beside one question. */
export function askedOf(answers: Answers, but: string): string {
  const known = resolve(interview.questions, answers, 'assume');
  return [...known.keys()].filter((id) => id !== but).join(' ');
}

/** What is made of one thing, made once for all that ask. */
function onceFor<Of extends object, Made>(make: (of: Of) => Made): (of: Of) => Made {
  const known = new WeakMap<Of, Made>();
  return (of) => {
    const made = known.get(of) ?? make(of);
    known.set(of, made);
    return made;
  };
}

/** Loads, demand, life support and bill check of a home by numbers, and its cautions for every route by id. */
export const homeSays = onceFor((answers: Answers) => {
  const home = homeOf(answers);
  const ids = home.loads.map((load) => [load.id, load.rank, load.follows, load.volts]);
  const { goalSeasons, lifeSupport } = home;
  const cautions = findings(home, routeKinds).map((one) => [one.id, one.severity, one.careful]);
  return JSON.stringify([ids, goalSeasons, lifeSupport, cautions, bare(home, notSaid)]);
});

const routesIn = onceFor((home: Home) => allRoutes(home, drawnAt(home), widths));

/** Routes, sizes, odds and prices. */
export const routesOf = onceFor((answers: Answers) =>
  JSON.stringify(
    routesIn(homeOf(answers)).map((route) => [
      route.kind,
      route.verdict,
      route.stops.length,
      route.ifs.length,
      route.carries,
      route.leavesOut.map((one) => one.load),
      bare(route, notSaid),
    ]),
  ),
);

/** The bill as it is read and the tariff that comes of it. */
export function billOf(answers: Answers): string {
  return JSON.stringify(tariffOf(homeOf(answers))?.tariff ?? null);
}

/** What a plan says whatever it advises: of outages, of leaving and of what is there; and the electrical half of the largest route that can be. */
export function plainlyOf(answers: Answers, id: string): string {
  return withoutEcho(plainlySays(answers), answers[id]);
}

const plainlySays = onceFor((answers: Answers) => {
  const home = homeOf(answers);
  const routes = routesIn(home);
  const said = [
    outlookOf(home),
    lifeFirst(home),
    whatIsThere(home, routes),
    electricalOf(home, answers, { route: largestIn(routes), routes }),
  ];
  return JSON.stringify([leavingPoint(home).map(english.leaving), bare(said, notSaid)]);
});

/** The money of every route that can work, as if the largest were advised and nothing known of how it rides through. */
export function moneySays(answers: Answers, id: string): string {
  return withoutEcho(moneySaid(answers), answers[id]);
}

const moneySaid = onceFor((answers: Answers) => {
  const home = homeOf(answers);
  const routes = routesIn(home);
  const money = moneyOf({
    home,
    routes,
    ownTariff: null,
    drawn: drawnAt(home),
    outlook: outlookOf(home),
    advice: { route: largestIn(routes) } as Advice,
    rideThrough: { routes: [] as readonly RouteRide[] } as RideThrough,
  });
  return JSON.stringify(bare(money, notSaid));
});

const largestIn = (routes: readonly Route[]) =>
  routes.findLast(({ verdict }) => verdict !== 'cannot')!;

/** The rest of a plan: money, electrical points, steps, the leaving point. */
export function planOf(answers: Answers, id: string): string {
  return withoutEcho(planSays(answers), answers[id]);
}

const planSays = onceFor((answers: Answers) => {
  const { home, assumptions, toFindOut, sources, ...plan } = makePlan(
    interview,
    answers,
    ASOF,
    1,
    null,
    sharedBank,
  );
  const steps = plan.nextSteps.map((step) => [english.step(step, home), step.who]);
  const ladder = plan.ladder.map((step) => step.switchOff);
  const leaving = plan.leavingPoint.map(english.leaving);
  const said = [steps, ladder, leaving, plan.advice.route.kind, bare(plan, notSaid)];
  return JSON.stringify(said);
});

/** A number that was answered is an echo where it stands again. */
function withoutEcho(text: string, answer: Answer | undefined): string {
  const numbers = [answer].flat().filter((one) => typeof one === 'number');
  return numbers.reduce<string>(
    (left, n) => left.replaceAll(new RegExp(`\\b${n}\\b`, 'g'), ''),
    text,
  );
}

/** Built once for all that look at it. */
const homeOf = onceFor((answers: Answers): Home => homeOfAnswers(answers, ASOF));

/** One drawn year of the home's place, drawn once. */
const drawnAt = (home: Home): SyntheticYears => drawnYears(home, 1);
