import type { MoneyRange } from '../../bill/lifecycle/money-range';
import type { PartName } from '../../bill/lifecycle/part-name';
import type { BetweenOutages } from '../../plan/money/between-outages';
import {
  type MoneyOfRoute,
  type PlanMoney,
  REAL_RATE,
  STUDY_YEARS,
} from '../../plan/money/plan-money';
import { carriesAll } from '../../plan/money/ridden';
import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import type { PlanData } from './plan-schema';
import { said } from './said';

/** The money of a plan as plain data, whole dollars where a cent would promise too much. */
export function moneyData(
  { money, home }: Pick<Plan, 'money' | 'home'>,
  words: Words,
): PlanData['money'] {
  return {
    studyYears: STUDY_YEARS,
    realRate: REAL_RATE,
    tariff:
      money.tariff === null
        ? 'off the grid'
        : { code: money.tariff.from.code, says: words.tariff(home, money.tariff) },
    tariffInFull:
      money.tariff === null ? 'off the grid' : copyOf(words.tariffInFull(money.tariff.tariff)),
    use: { code: money.use.code, says: words.use(money) },
    billFits: billFitData(money.billFit, words),
    outageHoursPerYear: {
      ordinary: round(money.outageHours.ordinary),
      major: round(money.outageHours.major),
    },
    routes: money.routes.map((route) => routeData(route, words)),
    reserveOf: money.reserveOf ?? 'no battery route',
    reserve: money.reserve.map((r) => ({
      share: round(r.share),
      keptKwh: round(r.keptKwh),
      savingsPerYear: round(r.savings),
      givenUpPerYear: round(r.cost),
      odds: round(r.odds),
      chosen: r.chosen,
    })),
    lossesPerYear: money.losses.map((l) => ({ name: l.name, dollars: round(l.dollarsPerYear) })),
    stages: money.stages.map((stage) => ({
      upTo: stage.upTo ?? 'later',
      dollars: round(stage.dollars),
      parts: namedParts(
        stage.parts.map(({ called }) => called),
        words,
      ),
    })),
    carriesOver: {
      moves: namedParts(money.carriesOver.moves, words),
      stays: namedParts(money.carriesOver.stays, words),
      says: words.carriesOver(money.carriesOver),
    },
    oldPrices: money.oldPrices.map((one) => {
      const { called, year, quoted } = one.price;
      return { name: words.part(called), year, quoted, says: words.oldPrice(one) };
    }),
    incentives: said(money.incentiveNotes, words.incentive),
  };
}

function namedParts(parts: readonly PartName[], words: Words) {
  return parts.map((called) => ({ code: called.code, name: words.part(called) }));
}

function billFitData(fit: PlanMoney['billFit'], words: Words): PlanData['money']['billFits'] {
  if (fit === null) return 'not checked';
  return fit.fits ? 'yes' : { code: fit.lookAt.code, says: words.billFit(fit) };
}

/** The form of the file has no read-only lists. */
type Copy<T> = T extends object ? { -readonly [Key in keyof T]: Copy<T[Key]> } : T;

const copyOf = <T>(value: T) => structuredClone(value) as Copy<T>;

function routeData(
  { kind, money, between, batteryLife, ridden, ...route }: MoneyOfRoute,
  words: Words,
): PlanData['money']['routes'][number] {
  const { simplePayback, discountedPayback } = money.byCase.likely;
  const or = (of: MoneyRange | null, why: string) => (of === null ? why : rangeData(of));
  const noHour = words.household.sideBySide.noOutageHour(ridden, carriesAll(ridden));
  return {
    kind,
    firstCost: rangeData(money.firstCost),
    lifeCycleCost: rangeData(money.lifeCycleCost),
    netPresentValue: rangeData(money.netPresentValue),
    costPerYear: rangeData(money.costPerYear),
    simplePayback: words.payback(simplePayback, STUDY_YEARS),
    discountedPayback: words.payback(discountedPayback, STUDY_YEARS),
    rateOfReturn: words.rates(money.byCase.likely),
    hoursRiddenPerYear: { ordinary: round(ridden.ordinary), major: round(ridden.major) },
    carriesOfMustRun: { carried: ridden.carried, of: ridden.of },
    perOutageHour: or(money.perOutageHour, noHour),
    perOrdinaryHour: or(money.perOrdinaryHour, noHour),
    perBackupKwh: or(money.perBackupKwh, 'none expected'),
    incentives: round(route.incentives),
    lifeYears: route.lifeYears ?? 'does not wear',
    upkeepPerYear: round(route.upkeepPerYear),
    leadWeeks: { ...route.leadWeeks },
    noise: words.noise(route.noise),
    movesHouse: namedParts(
      route.parts.filter((part) => part.movesHouse).map(({ called }) => called),
      words,
    ),
    betweenOutages:
      between === null
        ? 'does nothing on the bill'
        : {
            strategy: between.worthRunning ? between.strategy : 'wait',
            keptKwhByMonth: between.keptKwh.map(round),
            savingsPerYear: round(between.savings),
            ofThatSolar: round(between.solarSavings),
            wearPerYear: round(between.wear),
            batteryLifeYears:
              batteryLife === null ? 'no battery that wears' : round(batteryLife.years),
            ceilingPerYear: ceilingData(between, words),
            billBefore: round(between.before.total),
            billAfter: round(between.after.total),
          },
  };
}

function ceilingData({ ceiling, ceilingNote }: BetweenOutages, words: Words) {
  if (ceiling !== null) return round(ceiling);
  return ceilingNote === null
    ? 'left out'
    : { code: ceilingNote.code, says: words.ceilingNote(ceilingNote) };
}

function rangeData({ low, likely, high }: MoneyRange) {
  return { low: round(low), likely: round(likely), high: round(high) };
}

function round(value: number): number {
  const rounded = Number(value.toPrecision(4));
  return rounded === 0 ? 0 : rounded;
}
