import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { widthsOf } from '../../src/home/build-home';
import { SyntheticYears } from '../../src/home/weather/synthetic-years';
import type { Answers } from '../../src/interview/answers';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { allRoutes } from '../../src/routes/all-routes';
import { sayHowLong } from '../../src/words/en/routes/say-how-long';

const answers: Answers = {
  'people-count': 1,
  'medical-devices': ['none'],
  'goal-hours': 400,
  'goal-season': 'summer',
  'home-zip': '85003',
  'home-kind': 'house',
  'home-tenure': 'own',
  'heat-main': 'gas-furnace',
  'cool-main': 'none',
  'water-source': 'public',
  'fridge-count': 1,
  'must-run': ['lights', 'phones'],
  'nice-run': ['none'],
  'panel-kind': 'breakers',
  'panel-signs': ['none'],
  'main-amps': 200,
  'battery-place': 'attached-garage',
  'roof-face': 'south',
  'roof-area': 900,
  'roof-shade': 'little',
  'own-sources': ['home-battery', 'solar'],
  'battery-kwh': 20,
  'battery-kw': 5,
  'battery-kind': 'lfp',
  'battery-years': 1,
  'battery-backup': 'house',
  'battery-reserve': 100,
  'solar-kw': 8,
  'solar-in-outage': 'runs-house',
};

test('a goal of 400 hours is promised only by hours counted that far', () => {
  const home = homeFromAnswers(interview, answers, '2026-11-25');
  const routes = allRoutes(home, new SyntheticYears(home, 5), widthsOf(interview));
  const reaching = routes.filter((route) => route.lasting.reachesGoal && route.lasting.hours);
  expect(reaching.map((route) => route.kind)).toContain('own-battery');
  for (const { kind, lasting } of reaching) {
    expect(lasting.hours!.value, kind).toBeGreaterThanOrEqual(400);
    expect(sayHowLong(lasting), kind).not.toMatch(/two weeks/);
  }
});
