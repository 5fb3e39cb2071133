import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { draftMaker } from '../../src/plan/draft/draft-of';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { answersOf } from '../households/read-household';

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
  const { demand, goalSeasons } = homeFromAnswers(interview, answers, '2026-11-25');
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
    const { must } = homeFromAnswers(interview, answers, '2026-11-25').demand;
    expect(pane.runningWatts!.value).toBe(must.runningWatts.value);
    expect(pane.startVa!.value).toBe(must.startVa.value);
  },
);
