import type { Load } from '../src/home/home';
import type { Plan } from '../src/plan/plan';
import type { Route } from '../src/routes/route';
import { isOpen } from '../src/routes/stops/stop';
import { english } from '../src/words/en';
import { type Codes, codesIn } from './plans/codes-in';

/**
 * What a plan decides and how large it is, and no sentence: where this is equal, two plans advise, size, price and warn
 * alike, however they say it. A change of the plan's form is followed here, so that the codes stay what they were.
 */
export function planCodes(plan: Plan): Codes {
  return codesIn({
    state: plan.state,
    draftBecause: plan.draftBecause.map((one) => one.id),
    undecided: plan.undecided.map((one) => one.question),
    danger: plan.danger?.told.map((one) => one.id) ?? [],
    job: jobCodes(plan),
    loads: plan.home.loads.map(loadCodes),
    billCheck: plan.billCheck,
    outlook: outlookCodes(plan),
    routes: plan.routes.map(routeCodes),
    advised: plan.advice.route.kind,
    beside: plan.advice.beside.map((route) => route.kind),
    wholeJob: plan.advice.wholeJob?.kind ?? null,
    rideThrough: rideCodes(plan),
    money: moneyCodes(plan),
    lifeFirst: plan.lifeFirst,
    healthFirst: plan.healthFirst,
    comfortLost: plan.comfortLost,
    cautions: plan.cautions.map(({ id, severity, careful, asks }) => [
      id,
      severity,
      careful ? 'careful' : 'told',
      asks ?? 'nobody',
    ]),
    electricianFor: plan.electricianFor,
    electrical: {
      ...plan.electrical,
      scope: scopeCodes(plan),
      toSettle: plan.electrical.toSettle.map(({ id, questions }) => ({ id, questions })),
    },
    addOns: plan.addOns.map(({ id, ...usd }) => usd),
    fuelToStore: fuelCodes(plan),
    ladder: plan.ladder,
    steps: plan.nextSteps.map((step) => [step.id, step.who.replaceAll(' ', '-')]),
    possibleIf: plan.possibleIf.map(({ conditions, routes, cautions }) => [
      conditions.map(({ code }) => code),
      routes.map(({ kind, costUsd }) => [kind, costUsd]),
      cautions.map(({ id }) => id),
    ]),
    toFindOut: plan.toFindOut.map((one) => [
      one.question,
      one.changes,
      one.safety,
      one.decides?.code ?? null,
    ]),
    assumptions: plan.assumptions.map((one) => [one.question, one.asked]),
    lines: {
      willNotDo: plan.willNotDo.length,
      leavingPoint: plan.leavingPoint.length,
      electrician: plan.electrician.length,
      sources: plan.sources.length,
    },
  })!;
}

/** Odds and figures; what they are counted from, what fails first and what a step is are said of them. */
function rideCodes({ rideThrough }: Plan) {
  const routes = rideThrough.routes.map(({ basis, failsFirst, ...ride }) => ({
    ...ride,
    neighbors: ride.neighbors.map(({ step, ...odds }) => odds),
    variants: ride.variants.map(({ use, ...odds }) => odds),
  }));
  return { ...rideThrough, routes };
}

/** Whose record it is goes with the source of its figures. */
function outlookCodes({ outlook: { record, ...outlook } }: Plan) {
  return outlook;
}

/** Of where a power comes from only the kind, and only where it is all that goes on. */
function scopeCodes({ electrical: { scope } }: Plan) {
  const circuits = scope.circuits.map(({ how, called, ...circuit }) => ({
    ...circuit,
    ...(called === null && { name: null }),
    ...(how.is === undefined && { how: how.kind }),
  }));
  return { ...scope, circuits };
}

function fuelCodes({ fuelToStore }: Plan) {
  if (fuelToStore === null) return null;
  const { who, moreGallons, reachesGoal, thenHours } = fuelToStore;
  return { who, moreGallons, reachesGoal, thenHours };
}

function jobCodes({ home, job, jobTold }: Plan) {
  return {
    told: jobTold,
    goalHours: home.goalHours,
    goalSeasons: home.goalSeasons,
    people: home.people,
    lifeSupport: home.lifeSupport,
    demand: home.demand,
    figuresSaid: english
      .job(job, home)
      .map((one) => [...one.matchAll(/\d[\d,.]*\d|\d/g)].map(asNumber)),
  };
}

/** "1,487" as it stands in a sentence. */
const asNumber = ([said]: RegExpMatchArray) => Number(said.replaceAll(',', ''));

function loadCodes({ restsOn, called, ...load }: Load) {
  return load;
}

function routeCodes({ stops, leavesOut, parts, ...route }: Route) {
  return {
    ...route,
    stops: stops.map((stop) => (isOpen(stop) ? 'not-known' : 'told')),
    ifs: route.ifs.length,
    notes: route.notes.length,
    leavesOut: leavesOut.map((one) => [one.load, one.must]),
    parts: parts.map((part) => [part.equipmentClass, part.units, part.costUsd]),
  };
}

/** What of the bill to look at again stands among the answers to settle. */
function moneyCodes({ money }: Plan) {
  const { billFit } = money;
  return {
    ...money,
    billFit: billFit && { fits: billFit.fits, expected: billFit.expected },
  };
}
