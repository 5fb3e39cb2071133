import interview from '#compiled/questions.js';
import type { Home } from '../../../src/home/home';
import type { Answers } from '../../../src/interview/answers';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';

/** A gas-heated house with everything told that the electrical half asks for: invented, and no outside check. */
export const plainHouse: Answers = {
  'home-kind': 'house',
  'home-tenure': 'own',
  'home-zip': '48911',
  'home-area': 1500,
  'flood-history': 'never',
  'medical-devices': ['none'],
  'water-source': 'town',
  waste: 'sewer',
  sump: 'none',
  'heat-main': 'wood',
  'cool-main': 'none',
  'water-heater': 'electric-tank',
  'cook-main': 'electric',
  'big-loads': ['electric-dryer'],
  'goal-hours': 24,
  'main-amps': 200,
  'panel-bus': 200,
  'panel-kind': 'main-breaker',
  'panel-spaces': 4,
  'panel-signs': ['none'],
  'panel-distance': 50,
  'own-sources': ['none'],
  'engine-place': 'open-20ft',
  'battery-place': 'utility-room',
};

/** The house with some answers changed; undefined leaves a question unanswered. */
export function houseWith(changed: Record<string, Answers[string] | undefined> = {}): Home {
  return homeFromAnswers(interview, answersWith(changed), '2026-11-25');
}

export function answersWith(changed: Record<string, Answers[string] | undefined>): Answers {
  const all = Object.entries({ ...plainHouse, ...changed });
  return Object.fromEntries(all.filter(([, value]) => value !== undefined)) as Answers;
}
