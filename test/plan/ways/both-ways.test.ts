import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { hardestSeason } from '../../../src/advice/hardest-season';
import { goalShare } from '../../../src/advice/ride/goal-share';
import { loadsIn } from '../../../src/advice/ride/route-loads';
import { widthsOf } from '../../../src/home/build-home';
import { isHealthDevice } from '../../../src/home/people/health-devices';
import { SyntheticYears } from '../../../src/home/weather/synthetic-years';
import type { Answers } from '../../../src/interview/answers';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { goalOdds } from '../../../src/plan/ways/goal-odds';
import { inWay } from '../../../src/plan/ways/route-in-ways';
import { allRoutes } from '../../../src/routes/all-routes';
import { randomHome } from '../../random-home';

/** The last is one where cold food in turns once missed the sun of a battery with panels. */
const SEEDS = [...Array.from({ length: 23 }, (_, n) => 300 + n), 7320];
const HOMES = SEEDS.length;
/** A goal of whole days, for in a shorter piece of one a block of turns may hold more than its share. */
const DAYS = [24, 48, 72, 96];

const widths = widthsOf(interview);
const cases = SEEDS.map((seed, n) => {
  const device =
    n % 3 === 0 ? { 'medical-devices': ['cpap'], 'cpap-watts': 40, 'cpap-hours': 8 } : {};
  const answers = {
    ...randomHome(seed),
    'goal-hours': seed === 7320 ? 24 : DAYS[n % DAYS.length]!,
    ...device,
  } as Answers;
  const home = homeFromAnswers(interview, answers, '2026-11-25');
  const drawn = new SyntheticYears(home, 2);
  const routes = allRoutes(home, drawn, widths).filter(
    (route) =>
      route.verdict !== 'cannot' &&
      route.carries.length > 0 &&
      (route.usableKwh !== null || route.generator !== null),
  );
  return { home, drawn, routes, season: hardestSeason(home) };
});

describe(`of ${HOMES} random homes, every route with the same equipment`, () => {
  test('rides through at least as often thriftily as usual, likely and careful', () => {
    let [more, counted] = [0, 0];
    for (const { home, drawn, routes, season } of cases) {
      for (const route of routes) {
        const thrifty = inWay(home, route, 'thrifty');
        const [a, b] = [route, thrifty].map((one) => goalOdds(home, drawn, one, season));
        const [c, d] = [route, thrifty].map((one) =>
          goalShare(home, drawn, one, { season, careful: true }),
        );
        expect(b!, `${route.kind} likely`).toBeGreaterThanOrEqual(a! - 1e-9);
        expect(d!, `${route.kind} careful`).toBeGreaterThanOrEqual(c! - 1e-9);
        counted++;
        if (b! > a! || d! > c!) more++;
      }
    }
    expect(counted).toBeGreaterThan(30);
    expect(more).toBeGreaterThan(3);
  });

  test('gives the health devices the same energy in the same hours in both', () => {
    let devices = 0;
    for (const { home, routes } of cases) {
      for (const route of routes) {
        const own = (way: 'usual' | 'thrifty') =>
          (loadsIn(home, inWay(home, route, way), 'must') ?? [])
            .filter(isHealthDevice)
            .map(({ id, kwhPerDay, shape }) => ({ id, kwhPerDay, shape }));
        expect(own('thrifty')).toEqual(own('usual'));
        devices += own('usual').length;
      }
    }
    expect(devices).toBeGreaterThan(5);
  });
});
