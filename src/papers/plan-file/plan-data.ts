import type { Demand, Home, Load, Season } from '../../home/home';
import { readingOf } from '../../plan/ladder-reading';
import type { Plan } from '../../plan/plan';
import type { Figure } from '../../quantity/figure';
import type { Gap } from '../../routes/gap';
import type { Route } from '../../routes/route';
import { onlyUnknown } from '../../routes/stop';
import { sayGap } from '../../words/en/say-gap';
import { sayLeftOut } from '../../words/en/say-left-out';
import { billYearFigures } from './bill-year-data';
import { electricalData } from './electrical-data';
import { moneyData } from './money-data';
import { namedLoad, namedLoads } from './named-load';
import { rideThroughData } from './ride-through-data';

/** A figure as the plan file holds it: rounded, with its unit and where it came from. */
export interface FigureData {
  value: number;
  low: number;
  high: number;
  unit: string;
  from: string;
}

/** The plan as plain data for YAML and JSON. Numbers are rounded to four significant digits, keys stand in reading order. */
export function planData(plan: Plan) {
  return {
    lampkeeperPlan: plan.schemaVersion,
    schemaVersion: plan.schemaVersion,
    ...dangerData(plan),
    name: plan.name,
    asOf: plan.asOf,
    seed: plan.seed,
    weatherYears: plan.weatherYears,
    state: plan.state,
    draftBecause: plan.draftBecause.map((why) => why.says),
    undecided: plan.undecided.map((one) => ({ ...one })),
    job: [...plan.job],
    jobTold: plan.jobTold,
    place: {
      basis: plan.home.site.place.basis,
      stations: plan.home.site.place.stationsUsed,
      warnings: [...plan.home.site.place.warnings],
      state: plan.home.site.state ?? 'not known',
      elevation: figureData(plan.home.site.elevationFt),
      coldF: round(plan.home.site.coldF),
      hotF: round(plan.home.site.hotF),
    },
    goal: { hours: figureData(plan.home.goalHours), seasons: [...plan.home.goalSeasons] },
    lifeSupport: plan.home.lifeSupport,
    loads: plan.home.loads.map(loadData),
    demand: {
      mustRun: demandData(plan.home, plan.home.demand.must),
      mustAndGood: demandData(plan.home, plan.home.demand.good),
      everything: demandData(plan.home, plan.home.demand.all),
    },
    billCheck: billData(plan),
    calibration: plan.home.calibration ?? 'not from bills',
    billYear: billYearData(plan),
    rideThrough: rideThroughData(plan.rideThrough),
    money: moneyData(plan.money),
    outlook: {
      ordinaryTimes: figureData(plan.outlook.ordinaryTimes),
      ordinaryHours: figureData(plan.outlook.ordinaryHours),
      majorTimes: figureData(plan.outlook.majorTimes),
      majorHours: figureData(plan.outlook.majorHours),
      chanceOfGoalInTenYears: figureData(plan.outlook.chanceOfGoal),
      evidence: 'weak',
    },
    advised: { route: plan.advice.route.kind, because: plan.advice.because },
    beside: plan.advice.beside.map((route) => route.kind),
    wholeJob: plan.advice.wholeJob?.kind ?? 'none beyond the one advised',
    routes: plan.routes.map((route) => routeData(plan.home, route)),
    willNotDo: [...plan.willNotDo],
    cautions: plan.cautions.map((c) => ({
      id: c.id,
      severity: c.severity,
      says: c.says,
      who: [...c.who],
      because: c.because,
      figures: (c.figures ?? []).map((one) => ({
        load: one.load,
        at: one.at,
        figure: figureData(one.figure),
      })),
      careful: c.careful,
      asks: c.asks ?? 'no one question',
      proof: c.proof ?? 'none asked',
      cite: c.cite,
    })),
    electricianFor: plan.electricianFor,
    electrician: [...plan.electrician],
    electrical: electricalData(plan),
    addOns: plan.addOns.map((one) => ({ ...one })),
    fuelToStore: plan.fuelToStore?.says ?? 'nothing more',
    ladder: plan.ladder.map((step) => ({
      ...levelData(plan, step.atPercent),
      switchOff: namedLoads(plan.home, step.switchOff),
      savesWatts: round(step.savesWatts),
      gainsHours: step.gainsHours === null ? 'not counted' : round(step.gainsHours),
      why: step.why,
    })),
    lifeFirst: lifeFirstData(plan.lifeFirst),
    healthFirst: healthFirstData(plan.healthFirst),
    comfortLost: { heat: [...plan.comfortLost.heat], cool: [...plan.comfortLost.cool] },
    leavingPoint: [...plan.leavingPoint],
    toFindOut: plan.toFindOut.map((t) => ({ ...t, changes: round(t.changes) })),
    assumptions: plan.assumptions.map((a) => ({ ...a })),
    nextSteps: plan.nextSteps.map((s) => ({ ...s })),
    sources: [...plan.sources],
  };
}

export type PlanData = ReturnType<typeof planData>;

export function figureData(figure: Figure): FigureData {
  const { label, cite } = figure.source;
  return {
    value: round(figure.value),
    low: round(figure.low),
    high: round(figure.high),
    unit: figure.unit,
    from: cite === undefined ? label : `${label} [${cite}]`,
  };
}

function loadData(load: Load) {
  return {
    id: load.id,
    name: load.name,
    rank: { must: 'must keep running', good: 'good to have', wait: 'can wait' }[load.rank],
    lifeSupport: load.life,
    volts: load.volts,
    running: figureData(load.runningWatts),
    apparent: figureData(load.runningVa),
    startingCurrent: load.startAmps === null ? 'no motor to start' : figureData(load.startAmps),
    starting: load.startVa === null ? 'no motor to start' : figureData(load.startVa),
    energy: seasonData(load.kwhPerDay),
    shareByHour: load.shape.map((share) => round(share)),
    offInOutage: load.offInOutage,
    restsOn: [...load.restsOn],
  };
}

function demandData(home: Home, demand: Demand) {
  return {
    running: figureData(demand.runningWatts),
    apparent: figureData(demand.runningVa),
    starting: figureData(demand.startVa),
    hardestStart: demand.hardestStart === null ? 'none' : namedLoad(home, demand.hardestStart),
    startsTogether: namedLoads(home, demand.startsTogether),
    energy: seasonData(demand.kwhPerDay),
    wattsByHour: {
      winter: demand.wattsByHour.winter.map(round),
      summer: demand.wattsByHour.summer.map(round),
      mild: demand.wattsByHour.mild.map(round),
    },
    needs240Volts: demand.needs240,
  };
}

function seasonData(of: Readonly<Record<Season, Figure>>) {
  return {
    winter: figureData(of.winter),
    summer: figureData(of.summer),
    mild: figureData(of.mild),
  };
}

function billYearData({ home: { billYear } }: Plan) {
  const figures = billYear === null ? null : billYearFigures(billYear);
  if (figures === null) return null;
  const { monthsKwh, ...split } = figures;
  const data = {
    anyWeather: figureData(split.anyWeather),
    withCold: figureData(split.withCold),
    withHeat: figureData(split.withHeat),
    misfit: figureData(split.misfit),
    explained: figureData(split.explained),
  };
  return { monthsKwh: monthsKwh.map(round), ...data };
}

function billData({ billCheck }: Plan) {
  if (billCheck.verdict === 'not-possible') {
    return { verdict: billCheck.verdict, says: billCheck.because };
  }
  return {
    verdict: billCheck.verdict,
    says: billCheck.says,
    bill: figureData(billCheck.billKwhPerDay),
    loads: figureData(billCheck.loadsKwhPerDay),
    season: billCheck.season,
  };
}

function routeData(home: Home, route: Route) {
  return {
    kind: route.kind,
    title: route.title,
    verdict: route.verdict,
    cannotBecause: route.stops.map((stop) => stop.says),
    notKnownYet: onlyUnknown(route.stops),
    worksIf: [...route.ifs],
    carries: namedLoads(home, route.carries),
    leavesOut: route.leavesOut.map(({ load, why, must }) => ({
      ...namedLoad(home, load),
      code: why.code,
      why: sayLeftOut(why),
      must,
    })),
    power:
      route.power === null
        ? 'none'
        : {
            continuousWatts: round(route.power.continuousWatts),
            startVa: round(route.power.startVa),
            asksRunning: figureData(route.power.runningWatts),
            asksStarting: figureData(route.power.startDemandVa),
          },
    nameplateKwh: route.nameplateKwh === null ? 'none' : round(route.nameplateKwh),
    usableKwh: route.usableKwh === null ? 'none' : round(route.usableKwh),
    solarKw: route.solarKw === null ? 'none' : round(route.solarKw),
    sizeByOdds:
      route.sizeByOdds === null
        ? 'not sized by odds'
        : {
            nineOutagesInTenKwh: round(route.sizeByOdds.nineOutagesInTenKwh),
            nineYearsInTenKwh: round(route.sizeByOdds.nineYearsInTenKwh),
          },
    fuel:
      route.fuel === null
        ? 'none'
        : {
            fuel: route.fuel.fuel,
            perDay: figureData(route.fuel.perDay),
            atHand: route.fuel.atHand === null ? 'piped' : figureData(route.fuel.atHand),
          },
    gap: gapData(route.gap),
    lasts: route.lasting.says,
    lastsHours: route.lasting.hours === null ? 'no end foreseen' : figureData(route.lasting.hours),
    reachesGoal: route.lasting.reachesGoal,
    cost: figureData(route.costUsd),
    parts: route.parts.map((p) => ({ name: p.name, cost: figureData(p.costUsd), year: p.year })),
    notes: [...route.notes],
  };
}

function gapData(gap: Gap) {
  const { low, high } = gap.seconds ?? { low: 'none' as const, high: 'none' as const };
  return { code: gap.code, lowSeconds: low, highSeconds: high, says: sayGap(gap) };
}

/** Four significant digits, so that the file does not promise more than we know. */
function round(value: number): number {
  return value === 0 ? 0 : Number(value.toPrecision(4));
}

/** "From the start" is 100; a rung on piped gas has no level, and one on fuel has gallons beside its share. */
function levelData(plan: Plan, atPercent: number) {
  if (atPercent === 100) return { atPercent, atGallons: null };
  const reading = readingOf(plan, atPercent);
  return {
    atPercent: reading.of === 'strain' ? null : atPercent,
    atGallons: 'gallons' in reading ? reading.gallons : null,
  };
}

function healthFirstData(first: Plan['healthFirst']) {
  if (first === null) return null;
  return {
    carried: [...first.carried],
    missed: [...first.missed],
    covered: first.covered === null ? null : { ...first.covered },
  };
}

function lifeFirstData(first: Plan['lifeFirst']) {
  if (first === null) return 'nobody' as const;
  const { ownBattery } = first;
  return {
    ...first,
    callToday: [...first.callToday],
    ownBattery: { ...ownBattery, toldHours: ownBattery.toldHours ?? ('not known' as const) },
    secondWays: [...first.secondWays],
  };
}

/** Only a plan made while a danger is told has it. */
function dangerData({ danger }: Plan) {
  if (danger === null) return {};
  const told = danger.told.map(({ id, says }) => ({ id, says }));
  return { danger: { told, firstOfAll: [...danger.steps] } };
}
