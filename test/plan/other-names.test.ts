import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { advise } from '../../src/advice/advise';
import { loadsIn } from '../../src/advice/ride/route-loads';
import { widthsOf } from '../../src/home/build-home';
import type { Home } from '../../src/home/home';
import { SyntheticYears } from '../../src/home/weather/synthetic-years';
import { dwellingLoads } from '../../src/plan/electrical/dwelling-loads';
import { highEndShortfalls } from '../../src/plan/electrical/high-end';
import { startingOf } from '../../src/plan/electrical/starting';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { comfortLost } from '../../src/plan/ladder/comfort-lost';
import { ladderOf } from '../../src/plan/ladder/ladder';
import { healthFirst } from '../../src/plan/ride-through/health-first';
import { walkLadder } from '../../src/plan/ride-through/ladder-walk';
import { addOnsOf } from '../../src/plan/steps/add-ons';
import { tooColdForPump } from '../../src/plan/too-cold-for-pump';
import { allKinds } from '../../src/routes/all-routes';
import { mustMissed } from '../../src/routes/must-carried';
import { answersOf } from '../households/read-household';

const widths = widthsOf(interview);

/** Every load called the same: whatever joins or tells them apart by their names goes wrong at once. */
const nameless = (home: Home): Home => {
  const called = (load: Home['loads'][number]) => ({ ...load, name: 'thing' });
  return { ...home, loads: home.loads.map(called), usualLoads: home.usualLoads.map(called) };
};

/** What is decided about a home, in ids and figures. */
function decided(home: Home) {
  const drawn = new SyntheticYears(home, 1);
  const kinds = allKinds(home, drawn, widths);
  const routes = kinds.map((one) => one.route);
  const { route } = advise(home, drawn, kinds);
  const ladder = ladderOf(home, route);
  return {
    demand: home.demand.must,
    routes: routes.map(
      ({ kind, verdict, carries, leavesOut, transferTime: gap, power, costUsd }) => [
        ...[kind, verdict, carries, leavesOut, gap, power?.startVa, costUsd.value],
      ],
    ),
    missed: routes.map((one) => mustMissed(home, one).map(({ id }) => id)),
    advised: route.kind,
    ladder: ladder.map(({ atPercent, switchOff, savesWatts }) => [
      ...[atPercent, switchOff, savesWatts],
    ]),
    gains: walkLadder(home, drawn, route, ladder, 'winter').steps.map((step) => step.gainsHours),
    highEnd: highEndShortfalls(home, routes),
    starting: startingOf(home, routes).map(({ cure, ...figures }) => figures),
    tank: dwellingLoads(home, 240, 'value').appliances.map(({ va }) => va),
    health: healthFirst(home, drawn, route, 'winter'),
    comfort: comfortLost(home, route),
    cold: tooColdForPump(home, route) !== null,
    carried: loadsIn(home, route, 'must')?.map(({ id }) => id),
    addOns: addOnsOf(home, route, []).map((one) => one.usdLikely),
  };
}

test.each(['birch-street', 'mill-lane', 'ridge-road', 'tower-six'])(
  '%s is decided the same whatever its loads are called',
  (name) => {
    const home = homeFromAnswers(interview, answersOf(name), '2026-11-25');
    expect(decided(nameless(home))).toEqual(decided(home));
  },
);
