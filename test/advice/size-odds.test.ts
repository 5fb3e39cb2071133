import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { hardestSeason } from '../../src/advice/hardest-season';
import { loadsIn } from '../../src/advice/ride/route-loads';
import { MEANS_EVERY_HOURS } from '../../src/advice/ride/sampled-starts';
import { SizeOdds } from '../../src/advice/ride/size-odds';
import { walkableOf } from '../../src/advice/ride/walkable';
import { walkedShare } from '../../src/advice/ride/walked-odds';
import { widthsOf } from '../../src/home/build-home';
import { SyntheticYears } from '../../src/home/weather/synthetic-years';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { inWay } from '../../src/plan/ways/route-in-ways';
import { allRoutes } from '../../src/routes/all-routes';
import { answersOf } from '../households/read-household';

test('odds from the hours of the outages alone are those of outages walked hour by hour', () => {
  let [compared, between] = [0, 0];
  // With phones alone a generator rests for most of a thrifty day.
  const phones = { ...answersOf('birch-street'), 'must-run': ['phones'], 'gasoline-gallons': 3 };
  const homes = ['birch-street', 'tower-six', 'ridge-road', 'mill-lane'].map(
    (name) => [name, answersOf(name)] as const,
  );
  for (const [name, answers] of [...homes, ['phones alone', phones] as const]) {
    const home = homeFromAnswers(interview, answers, '2026-11-25');
    const drawn = new SyntheticYears(home, 4);
    const season = hardestSeason(home);
    const odds = new SizeOdds(home, drawn, season);
    const goal = Math.round(home.goalHours.value);
    const routes = allRoutes(home, drawn, widthsOf(interview));
    const able = routes.filter(
      ({ verdict, carries }) => verdict !== 'cannot' && carries.length > 0,
    );
    // Thriftily a generator started by hand stands still while nothing is on.
    for (const route of able.flatMap((one) => [one, inWay(home, one, 'thrifty')])) {
      const loads = loadsIn(home, route, 'must') ?? [];
      for (const careful of [false, true]) {
        const way = walkableOf(home, drawn, route, { classes: [loads], season, careful });
        const { share } = walkedShare(way, goal, MEANS_EVERY_HOURS);
        expect(odds.sampledShare({ route, loads, careful }), `${name} ${route.kind}`).toBe(share);
        compared += 1;
        if (share > 0 && share < 1) between += 1;
      }
    }
  }
  expect(compared).toBeGreaterThan(30);
  expect(between).toBeGreaterThan(3);
});
