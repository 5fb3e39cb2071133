import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { advise } from '../../src/advice/advise';
import { TRIAL_YEARS, trials } from '../../src/advice/trial';
import { SyntheticYears } from '../../src/home/weather/synthetic-years';
import type { Answers } from '../../src/interview/answers';
import { draftMaker } from '../../src/plan/draft/draft-of';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { missingForAdvice } from '../../src/plan/sureness/floor-of-answers';
import { allKinds } from '../../src/routes/all-routes';
import { size, widths } from '../advice/list-case';
import { answersOf } from '../households/read-household';
import { randomHome } from '../random-home';

const AS_OF = '2026-11-25';

const bills = { 'bill-kwh': 2400, 'bill-season': 'winter', 'bill-mild-kwh': 700 };

test.each([
  ['ridge-road', {}],
  ['ridge-road', bills],
  ['ridge-road', { ...bills, 'one-room': 'yes' }],
  ['birch-street', {}],
  ['tower-six', {}],
  ['mill-lane', {}],
])('pane and plan show the same watts and kWh: %s with %o', (name, more) => {
  const answers = { ...answersOf(name), ...more };
  const pane = draftMaker(interview)(answers);
  const { demand, goalSeasons } = homeFromAnswers(interview, answers, AS_OF);
  const most = Math.max(...goalSeasons.map((season) => demand.must.kwhPerDay[season].value));
  expect(pane.runningWatts!.value).toBe(demand.must.runningWatts.value);
  expect(pane.startVa!.high).toBe(demand.must.startVa.high);
  expect(pane.kwhPerDay!.value).toBe(most);
});

test('a refrigerator ticked is in the pane, counted or not', () => {
  const pane = draftMaker(interview)({ 'must-run': ['fridge'] });
  expect(pane.loads.filter((load) => load.rank === 'must').map((load) => load.id)).toContain(
    'fridge',
  );
});

test.each([
  ['not answered', {}],
  ['not sure', { 'home-zip': 'not sure' }],
])(
  'with a ZIP code %s the pane stands where the plan does, and heats nothing in summer',
  (_, zip) => {
    const answers = {
      ...zip,
      'home-kind': 'house',
      'heat-main': 'heat-pump',
      'must-run': ['heat', 'fridge'],
      'goal-season': 'summer',
    };
    const pane = draftMaker(interview)(answers);
    const { must } = homeFromAnswers(interview, answers, AS_OF).demand;
    expect(pane.runningWatts!.value).toBe(must.runningWatts.value);
    expect(pane.startVa!.value).toBe(must.startVa.value);
  },
);

/** Homes made up by chance; `npm run soak -- --part pane` takes a hundred. */
const RANDOM = [7101, 7102, 7103, 7106];
const homes: readonly (readonly [string, Answers])[] = [
  ...['birch-street', 'tower-six', 'mill-lane', 'meadow-way'].map(
    (name) => [name, answersOf(name)] as const,
  ),
  ...RANDOM.map((seed) => [`random home ${seed}`, randomHome(seed)] as const),
];

test.each(homes)('pane and plan advise one route, five drawn years with five: %s', (_, answers) => {
  const { glance } = draftMaker(interview, null, trials(interview, AS_OF))(answers);
  const home = homeFromAnswers(interview, answers, AS_OF);
  const drawn = new SyntheticYears(home, TRIAL_YEARS);
  const { route } = advise(home, drawn, allKinds(home, drawn, widths), size);
  if (glance.route === null) expect(glance.missing).toEqual(missingForAdvice(home));
  else {
    expect(glance.route.kind).toBe(route.kind);
    expect(glance.route.costUsd.value).toBe(route.costUsd.value);
    expect(glance.route.hours?.value).toBe(route.lasting.hours?.value);
    expect(glance.route.reachesGoal).toBe(route.lasting.reachesGoal);
  }
});
