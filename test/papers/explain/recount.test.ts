import { expect, test } from 'vitest';
import { loadsIn } from '../../../src/advice/ride/route-loads';
import { storeLimits } from '../../../src/advice/ride/walk-system';
import { livedHome } from '../../../src/home/measures/lived-home';
import { SyntheticYears } from '../../../src/home/weather/synthetic-years';
import type { Answers } from '../../../src/interview/answers';
import { explainText } from '../../../src/papers/explain/explain-text';
import { fuelLine } from '../../../src/physics/generator-fuel';
import { explainable } from '../../../src/plan/explain/explainable';
import type { FigureId } from '../../../src/plan/explain/figure-ids';
import type { Plan } from '../../../src/plan/plan';
import { fuelHeatKwh, generatorType } from '../../../src/tables/fuels';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';
import { answersOf } from '../../households/read-household';
import { plainWalk } from '../../outage/plain-walk';
import { stepsIn, unwrapped } from './by-hand';

const YEARS = 5;
const AS_OF = '2026-11-25';
/** First hours of January, February, March and December of a year of 365 days. */
const [JANUARY, MARCH, DECEMBER] = [0, 59 * 24, 334 * 24];
const isWinter = (hour: number) => hour % 8760 < MARCH || hour % 8760 >= DECEMBER;

/** Outages carried and counted, as printed: the two numbers of the last division. */
function printed(plan: Plan, id: FigureId): { carried: number; counted: number } {
  const one = explainable(plan).find((each) => each.id === id)!;
  const reader = { asked: () => null, words: english, columns: 80 };
  const [step] = stepsIn(unwrapped(explainText(one, reader)));
  const [, carried, counted] = /^100 x ([\d,]+) \/ ([\d,]+)$/.exec(step!.right)!;
  return {
    carried: Number(carried!.replace(/,/g, '')),
    counted: Number(counted!.replace(/,/g, '')),
  };
}

/** Hours of what must run on the route advised, as the household lives on it. */
function hoursOf(plan: Plan) {
  const { route } = plan.advice;
  const home = livedHome(plan.home, route.way);
  const loads = loadsIn(home, route, 'must')!;
  return { route, loads, kw: new SyntheticYears(home, YEARS).loadKw(loads) };
}

const planOf = (name: string, changed: Answers) =>
  frozenPlan({ ...answersOf(name), ...changed }, AS_OF, YEARS);

test('odds on a pack, counted in every hour of winter, are those of a store stepped hour by hour', () => {
  const plan = planOf('tower-six', { 'goal-hours': 50 });
  const { route, loads, kw } = hoursOf(plan);
  const limits = storeLimits(route, { loads, season: 'winter' });
  const net = Float64Array.from(kw, (load) => -load / limits.dischargeEfficiency - limits.idleKw);
  const cap = route.usableKwh!;
  let [carried, counted] = [0, 0];
  for (let start = JANUARY; start < net.length; start++) {
    if (!isWinter(start)) continue;
    counted += 1;
    if (plainWalk(net, start, 50, cap, cap).unservedKwh < 1e-9) carried += 1;
  }
  expect(printed(plan, 'odds')).toEqual({ carried, counted });
  // Some are carried and some are not, or nothing would be told apart.
  expect(carried).toBeGreaterThan(0);
  expect(carried).toBeLessThan(counted);
});

test('odds on fuel with the cans filled, from one start in 185 hours, are those of fuel burned hour by hour', () => {
  const plan = planOf('birch-street', {});
  const { route, kw } = hoursOf(plan);
  const type = generatorType('portable');
  const line = fuelLine({
    ratedKw: route.generator!.ratedKw,
    fullLoadEfficiency: type.efficiency,
    noLoadRatio: type.noLoadRatio,
    kwhPerUnit: fuelHeatKwh('gasoline').lowerKwh,
  });
  const fuel = plan.waysOfLiving.routes.find(({ kind }) => kind === route.kind)!.storedGal!;
  let [carried, counted] = [0, 0];
  for (let start = 0; start < kw.length; start += 185) {
    if (!isWinter(start)) continue;
    counted += 1;
    let left = fuel;
    for (let h = 0; h < 72; h++) {
      left -= line.noLoadPerHour + line.perKwh * kw[(start + h) % kw.length]!;
    }
    if (left >= 0) carried += 1;
  }
  expect(printed(plan, 'odds')).toEqual({ carried, counted });
  // Some are carried and some are not, or nothing would be told apart.
  expect(carried).toBeGreaterThan(0);
  expect(carried).toBeLessThan(counted);
});
