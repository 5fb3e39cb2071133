import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { widthsOf } from '../../src/home/build-home';
import { SyntheticYears } from '../../src/home/weather/synthetic-years';
import type { Answers } from '../../src/interview/answers';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { coveredBy } from '../../src/plan/ride-through/covered';
import { hungryShare } from '../../src/routes/hungry-share';
import { batteryGenerator } from '../../src/routes/kinds/battery-generator';
import { CHARGE_EFFICIENCY } from '../../src/routes/kinds/charging-generator';
import { CHARGE_LOAD } from '../../src/routes/walk-generator';
import { answersOf } from '../households/read-household';

const YEARS = 2;

/** The same loads and place; only whether health may hang on the power differs. */
function routeFor(medicalDevices: string, changed: Answers = {}) {
  const answers: Answers = {
    ...answersOf('birch-street'),
    'flood-history': 'never',
    'medical-devices': [medicalDevices],
    ...changed,
  };
  const home = homeFromAnswers(interview, answers, '2026-11-25');
  return {
    home,
    route: batteryGenerator(home, new SyntheticYears(home, YEARS), widthsOf(interview)),
  };
}

const plain = routeFor('none');
const careful = routeFor('prefer-not-to-say');

test('where health may hang on power, battery and charging hours go by the hungry day', () => {
  expect(plain.route.verdict).not.toBe('cannot');
  expect(careful.route.carries).toEqual(plain.route.carries);
  const carried = careful.home.loads.filter(({ id }) => careful.route.carries.includes(id));
  const hungry = hungryShare(carried, 'winter');
  expect(hungry).toBeGreaterThan(1.1);
  expect(careful.route.nameplateKwh!).toBeGreaterThan(plain.route.nameplateKwh!);
  const runs = ({ route }: typeof plain) => route.generator!.runsByHour!.reduce((a, b) => a + b, 0);
  const ratedKwh = (of: typeof plain) => runs(of) * of.route.generator!.siteKw;
  expect(ratedKwh(careful) / ratedKwh(plain)).toBeGreaterThan(1.05);
});

test('what it is likely to burn does not go up by being careful, but for a larger generator', () => {
  const { fuel } = careful.route;
  expect(fuel!.perDay.high).toBeGreaterThan(fuel!.perDay.value);
  expect(careful.route.lasting.hours!.low).toBeLessThanOrEqual(careful.route.lasting.hours!.value);
});

test('hungry use that the hours of the generator do not refill ends the careful count, whatever fuel there is', () => {
  const { home, route } = routeFor('none', {
    'must-run': ['fridge', 'freezer', 'lights', 'phones'],
    'gasoline-gallons': 25,
  });
  const carried = home.loads.filter(({ id }) => route.carries.includes(id));
  const kwhPerDay = carried.reduce((sum, load) => sum + load.kwhPerDay.winter.value, 0);
  const hungryDay = kwhPerDay * hungryShare(carried, 'winter');
  // By hand: hours run x what it gives x the share of its rating it is loaded with x what arrives in the battery.
  const { runsByHour, siteKw } = route.generator!;
  const hours = runsByHour.reduce((a, b) => a + b, 0);
  const refill = hours * siteKw * CHARGE_LOAD * CHARGE_EFFICIENCY;
  expect(hungryDay).toBeGreaterThan(refill);
  const { low, value } = route.lasting.hours!;
  expect(low).toBeLessThanOrEqual((24 * route.usableKwh!) / (hungryDay - refill));
  expect(low).toBeLessThan(value);
});

test('the careful hours are those of the walk that the careful odds come from', () => {
  const { home, route } = routeFor('none', { 'must-run': ['fridge', 'freezer', 'lights'] });
  const drawn = new SyntheticYears(home, YEARS);
  const loads = home.loads.filter(({ id }) => route.carries.includes(id));
  const { low, value } = route.lasting.hours!;
  const walked = coveredBy(home, drawn, route, { loads, season: 'winter' });
  // So few years are walked from fewer starts than the odds are.
  expect(Math.abs(value - walked.likelyHours)).toBeLessThanOrEqual(2);
  expect(Math.abs(low - walked.carefulHours)).toBeLessThanOrEqual(2);
});
