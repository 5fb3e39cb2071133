import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { billData, billYearData } from './bill-data';
import { cautionData } from './caution-data';
import { electricalData, toSettleData } from './electrical-data';
import { figureData, round } from './figure-data';
import { firstBuyData } from './first-buy-data';
import { jobData } from './job-data';
import { ladderData } from './ladder-data';
import { healthFirstData, lifeFirstData } from './life-data';
import { listData, waysOnData } from './list-data';
import { demandData, loadData } from './load-data';
import { moneyData } from './money-data';
import { PLAN_FILE_VERSION } from './plan-file-version';
import type { PlanData } from './plan-schema';
import { possibleIfData } from './possible-if-data';
import { rideThroughData } from './ride-through-data';
import { routeData } from './route-data';
import { said } from './said';
import { addOnData, fuelToStoreData, stepData } from './step-data';
import { thereData } from './there-data';
import { waysData } from './ways-data';

/** The plan as plain data for YAML and JSON. Numbers are rounded to four significant digits, keys stand in reading order. */
export function planData(plan: Plan, words: Words): PlanData {
  return {
    lampkeeperPlan: PLAN_FILE_VERSION,
    schemaVersion: PLAN_FILE_VERSION,
    language: words.language,
    ...dangerData(plan),
    name: plan.name,
    asOf: plan.asOf,
    seed: plan.seed,
    weatherYears: plan.weatherYears,
    state: plan.state,
    draftBecause: plan.draftBecause.map((why) => ({ code: why.id, says: words.draftReason(why) })),
    undecided: plan.undecided.map((one) => ({ ...one, decides: words.decides[one.question] })),
    job: jobData(plan, words),
    jobTold: plan.jobTold,
    place: {
      basis: {
        code: plan.home.site.place.basis.code,
        says: words.placeBasis(plan.home.site.place.basis),
      },
      stations: words.stations(plan.home.site.place.stations),
      warnings: said(plan.home.site.place.warnings, words.placeWarning),
      state: plan.home.site.state ?? 'not known',
      elevation: figureData(plan.home.site.elevationFt, words),
      coldF: round(plan.home.site.coldF),
      hotF: round(plan.home.site.hotF),
    },
    goal: { hours: figureData(plan.home.goalHours, words), seasons: [...plan.home.goalSeasons] },
    lifeSupport: plan.home.lifeSupport,
    loads: plan.home.loads.map((load) => loadData(load, words)),
    demand: {
      mustRun: demandData(plan.home, plan.home.demand.must, words),
      mustAndGood: demandData(plan.home, plan.home.demand.good, words),
      everything: demandData(plan.home, plan.home.demand.all, words),
    },
    billCheck: billData(plan, words),
    calibration:
      plan.home.calibration === null
        ? 'not from bills'
        : {
            code: plan.home.calibration.code,
            says: words.calibration(plan.home.calibration),
          },
    billYear: billYearData(plan, words),
    rideThrough: rideThroughData(plan.rideThrough, words),
    money: moneyData(plan, words),
    outlook: {
      ordinaryTimes: figureData(plan.outlook.ordinaryTimes, words),
      ordinaryHours: figureData(plan.outlook.ordinaryHours, words),
      majorTimes: figureData(plan.outlook.majorTimes, words),
      majorHours: figureData(plan.outlook.majorHours, words),
      chanceOfGoalInTenYears: figureData(plan.outlook.chanceOfGoal, words),
      evidence: 'weak',
    },
    advised: {
      route: plan.advice.route.kind,
      reason: plan.advice.reason.code,
      because: words.whyAdvised(plan.advice.reason),
      firstBuy: firstBuyData(plan),
    },
    list: listData(plan, words),
    waysOn: waysOnData(plan, words),
    beside: plan.advice.beside.map((route) => route.kind),
    wholeJob: plan.advice.wholeJob?.kind ?? 'none beyond the one advised',
    routes: plan.routes.map((route) => {
      const notKnownYet = plan.counts[route.kind].onlyUnknown;
      return routeData(plan.home, { route, notKnownYet }, words);
    }),
    possibleIf: plan.possibleIf.map((one) => possibleIfData(one, words)),
    willNotDo: said(plan.willNotDo, (one) => words.willNotDo(one, plan.home)),
    cautions: plan.cautions.map((one) => cautionData(plan.home, one, words)),
    frontCautions: plan.frontCautions.map(({ id }) => id),
    electricianFor: plan.electricianFor,
    toCall: { ...plan.toCall },
    electrician: said(plan.electrician, (one) => words.forElectrician.point(plan.home, one)),
    electrical: electricalData(plan, words),
    settleIfEver: toSettleData(plan.settleIfEver, words),
    addOns: plan.addOns.map((one) => addOnData(one, words)),
    fuelToStore: fuelToStoreData(plan, words),
    ladder: ladderData(plan, words),
    lifeFirst: lifeFirstData(plan.lifeFirst),
    healthFirst: healthFirstData(plan.healthFirst),
    whatIsThere: thereData(plan, words),
    waysOfLiving: waysData(plan, words),
    comfortLost: { heat: [...plan.comfortLost.heat], cool: [...plan.comfortLost.cool] },
    leavingPoint: said(plan.leavingPoint, words.leaving),
    toFindOut: plan.toFindOut.map(({ decides, ...one }) => ({
      ...one,
      changes: round(one.changes),
      code: decides?.code ?? 'caution',
      decides: decides === null ? 'a caution waits for it' : words.whyNow(decides),
    })),
    assumptions: plan.assumptions.map((one) => assumptionData(one, words)),
    nextSteps: plan.nextSteps.map((step) => stepData(plan, step, words)),
    grownOld: plan.grownOld.map((one) => ({ ...one })),
    sources: words.cites(plan.sources),
  };
}

function assumptionData(
  one: Plan['assumptions'][number],
  words: Words,
): PlanData['assumptions'][number] {
  const { says, assumed, because } = words.assumption(one);
  const { question, code, asked } = one;
  const ask = one.code === 'open-answer' ? { ask: one.ask } : {};
  return { question, code, says, ...ask, assumed, because, asked };
}

/** Only a plan made while a danger is told has it. */
function dangerData({ danger }: Plan) {
  if (danger === null) return {};
  const told = danger.told.map(({ id, says }) => ({ id, says }));
  return { danger: { told, firstOfAll: [...danger.steps] } };
}
