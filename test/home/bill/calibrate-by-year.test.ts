import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { hourlyLoadKw } from '../../../src/home/weather/hourly-load';
import { SyntheticYears } from '../../../src/home/weather/synthetic-years';
import { monthDegrees } from '../../../src/home/weather/usual-hours';
import { weatherKwh } from '../../../src/home/weather/weather-kwh';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { planData } from '../../../src/papers/plan-file/plan-data';
import { planSchema } from '../../../src/papers/plan-file/plan-schema';
import { MONTH_DAYS, MONTH_OF_DAY } from '../../../src/physics/weather/calendar';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { answersToSettle } from '../../../src/plan/sureness/answers-to-settle';
import { english } from '../../../src/words/en';
import { sayCites } from '../../../src/words/en/cites/say-cite';
import { answersOf, planOf } from '../../households/read-household';

type Changed = Record<string, string | number | string[] | number[]>;
const homeOf = (changed: Changed = {}) =>
  homeFromAnswers(interview, { ...answersOf('ridge-road'), ...changed }, '2026-11-25');

const plain = homeOf();
const { climate } = plain.site.place;
const counted = weatherKwh(plain.loads, climate);
/** Invented, arithmetic: twelve months from a base and so many times the heating and cooling that we count. */
const twelve = (base: number, heat: number, cool: number) =>
  MONTH_DAYS.map((days, m) =>
    Math.round(days * (base + heat * counted.heating[m]! + cool * counted.cooling[m]!)),
  );
const year = (months: number[]) => ({ 'bill-year-known': 'yes', 'bill-year-kwh': months });
const withBills = (months: number[], changed: Changed = {}) =>
  homeOf({ ...year(months), ...changed });
const pumpOf = (home: typeof plain) => home.loads.find((load) => load.id === 'heat-pump')!;
const contradicted = (changed: Changed) =>
  answersToSettle(interview, { ...answersOf('ridge-road'), ...changed }, '2026-11-25');

describe('twelve bills', () => {
  test('give base, heating and cooling back that they were built from', () => {
    const { fit, heating, cooling } = withBills(twelve(18, 1.6, 0.7)).billYear!;
    expect(fit!.baseKwhPerDay).toBeCloseTo(18, 1);
    expect(heating.billedKwh / heating.countedKwh).toBeCloseTo(1.6, 2);
    expect(cooling.billedKwh / cooling.countedKwh).toBeCloseTo(0.7, 2);
    expect(fit!.cvRmse).toBeLessThan(0.001);
  });

  // Where nothing that follows the weather is named the published form stands: degree days to base 65 F.
  test('split by plain degree days where no heating or cooling was named', () => {
    const { heatingK, coolingK } = monthDegrees(climate);
    const months = MONTH_DAYS.map((days, m) =>
      Math.round(days * (12 + 1.5 * heatingK[m]! + 2 * coolingK[m]!)),
    );
    const { fit } = withBills(months, { 'heat-main': 'wood', 'cool-main': 'none' }).billYear!;
    expect(fit!.baseKwhPerDay).toBeCloseTo(12, 1);
    expect(fit!.kwhPerHeatingK).toBeCloseTo(1.5, 2);
    expect(fit!.kwhPerCoolingK).toBeCloseTo(2, 1);
  });

  // The meter of twenty drawn years, read as bills of a mean year, comes from the hours and not from the fit.
  test.each([
    ['ridge-road', '24477'],
    ['ridge-road', '55731'],
    ['ridge-road', '85001'],
    ['tower-six', '48911'],
  ])('of the drawn hours of %s at %s leave heating within 6 % of what was counted', (name, zip) => {
    const told = { ...answersOf(name), 'home-zip': zip, 'bill-kwh': 900 };
    const home = homeFromAnswers(interview, told, '2026-11-25');
    const metered = home.loads.filter((load) => !load.onlyInOutage);
    const loads = metered.map((load) => ({ ...load, offInOutage: false }));
    const hours = hourlyLoadKw(loads, new SyntheticYears(home, 20).airC(), home.site.place.climate);
    const months = new Array<number>(12).fill(0);
    hours.forEach((kw, i) => {
      months[MONTH_OF_DAY[Math.floor(i / 24) % 365]!]! += kw / 20;
    });
    const answers = { ...told, ...year(months.map(Math.round)) };
    const { heating, fit } = homeFromAnswers(interview, answers, '2026-11-25').billYear!;
    expect(Math.abs(heating.billedKwh / heating.countedKwh - 1)).toBeLessThan(0.06);
    expect(fit!.cvRmse).toBeLessThan(0.03);
  });

  test('set heating in proportion: half the slope is half the heating, the rest as it was told', () => {
    const [one, half] = [withBills(twelve(18, 1.4, 0)), withBills(twelve(18, 0.7, 0))];
    const [more, less] = [pumpOf(one).kwhPerDay.winter, pumpOf(half).kwhPerDay.winter];
    expect(less.value / more.value).toBeCloseTo(0.5, 2);
    expect(more.value / pumpOf(plain).kwhPerDay.winter.value).toBeCloseTo(1.4, 2);
    for (const load of plain.loads.filter((l) => ['neither', 'room'].includes(l.follows))) {
      expect(half.loads.find((l) => l.id === load.id)!.kwhPerDay).toEqual(load.kwhPerDay);
    }
    expect(more.low).toBeLessThanOrEqual(pumpOf(plain).kwhPerDay.winter.low);
    expect(less.high).toBeGreaterThanOrEqual(pumpOf(plain).kwhPerDay.winter.high);
  });

  test('are said with what we would have counted, the misfit, and the method among the sources', () => {
    const plan = planOf('ridge-road', year(twelve(18, 0.8, 0.9)));
    expect(english.calibration(plan.home.calibration!)).toMatch(/18\.\d kWh a day in any weather/);
    expect(english.calibration(plan.home.calibration!)).toMatch(/months miss this by \d %/);
    expect(english.calibration(plan.home.calibration!)).toContain(
      'the plan goes by your bills, and heating counts',
    );
    expect(planMarkdown(plan, english)).toContain(english.calibration(plan.home.calibration!));
    expect(sayCites(plan.sources).join(' ')).toContain('Fels 1986');
  });

  test('that do not follow the weather change nothing, and say so with the limit; between, the fit is called rough', () => {
    const away = twelve(18, 0.8, 0.9).map((kwh, m) => (m % 3 === 0 ? kwh * 2.2 : kwh * 0.6));
    const home = withBills(away);
    expect(english.calibration(home.calibration!)).toMatch(/do not follow the weather.*25 %/);
    expect(pumpOf(home).kwhPerDay).toEqual(pumpOf(plain).kwhPerDay);
    const some = twelve(18, 0.8, 0.9).map((kwh, m) =>
      Math.round(kwh * (m % 2 === 0 ? 1.17 : 0.83)),
    );
    expect(english.calibration(withBills(some).calibration!)).toContain(
      'more than the 15 % of a good fit',
    );
  });

  test('far from the answers are not believed: no heating at all beside a heat pump', () => {
    const home = withBills(twelve(30, 0, 0));
    expect(english.calibration(home.calibration!)).toContain(
      'too far from the bills to go by them',
    );
    expect(pumpOf(home).kwhPerDay).toEqual(pumpOf(plain).kwhPerDay);
  });

  test('that show heating where none was named send the household to look for it', () => {
    const none = { 'heat-main': 'wood', 'cool-main': 'none' };
    const home = withBills(twelve(18, 0.8, 0), none);
    expect(english.calibration(home.calibration!)).toContain('little that uses power for heating');
  });

  test('of an empty home are no calibration', () => {
    const home = withBills(new Array(12).fill(0));
    expect(english.calibration(home.calibration!)).toContain('no use at all');
    expect(pumpOf(home).kwhPerDay).toEqual(pumpOf(plain).kwhPerDay);
  });

  test('stand before the two bills, which stay in the file', () => {
    const home = withBills(twelve(18, 0.8, 0.9), { 'bill-mild-kwh': 780 });
    expect(english.calibration(home.calibration!)).not.toContain('two bills');
  });
});

describe('the check against twelve bills', () => {
  test('takes the season that fits worst', () => {
    const months = twelve(25, 0.8, 0.9);
    months[3] = 150;
    months[9] = 150;
    const { billCheck } = withBills(months);
    expect(billCheck.verdict).not.toBe('not-possible');
    if (billCheck.verdict === 'not-possible') return;
    expect(billCheck.season).toBe('mild');
    expect(billCheck.billKwhPerDay.value).toBeCloseTo((150 / 30 + 150 / 31) / 2, 9);
    expect(billCheck.billKwhPerDay.source.is).toEqual({ code: 'bills-of', months: [3, 9] });
  });

  test('what must run is held against winter and summer, and points at the twelve', () => {
    const found = contradicted(year(twelve(2, 0, 0))).find(
      (one) => one.id === 'must-run-over-bill',
    )!;
    expect(found.questions).toEqual(['must-run', 'bill-year-kwh']);
  });

  test('one month that cannot be of the same home is asked about', () => {
    const ids = (kwh: number) =>
      contradicted({ ...year(twelve(18, 0.8, 0.9)), 'bill-kwh': kwh }).map((one) => one.id);
    expect(ids(1650)).not.toContain('month-outside-year');
    expect(ids(165)).toContain('month-outside-year');
    expect(ids(9000)).toContain('month-outside-year');
  });
});

test('the plan file holds the twelve months and what they split into, and null without them', () => {
  const months = twelve(18, 0.8, 0.9);
  const { billYear } = planData(planOf('ridge-road', year(months)), english);
  expect(billYear!.monthsKwh).toEqual(months);
  expect(billYear!.anyWeather).toMatchObject({ unit: 'kWh/day' });
  const all =
    365 * billYear!.anyWeather.value + billYear!.withCold.value + billYear!.withHeat.value;
  const sum = months.reduce((a, b) => a + b, 0);
  expect(Math.abs(all / sum - 1)).toBeLessThan(0.005);
  expect(planSchema.shape.billYear.safeParse(billYear).success).toBe(true);
  expect(planData(planOf('ridge-road'), english).billYear).toBeNull();
});
