import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { type Answers, NOT_SURE } from '../../src/interview/answers';
import { relevant } from '../../src/interview/questions/relevant';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { leavingForPeople, leavingPoint } from '../../src/plan/leaving-point';
import { lifeFirst } from '../../src/plan/life-first';
import { findings } from '../../src/rules/find';
import { english } from '../../src/words/en';
import { answersOf } from '../households/read-household';

const ventilator: Answers = {
  ...answersOf('tower-six'),
  'medical-devices': ['ventilator'],
  'device-battery-hours': 6,
  'device-battery-tested': 'yes',
  'trip-hours': 1,
};
const homeOf = (answers: Answers) => homeFromAnswers(interview, answers, '2026-11-25');
const asked = (answers: Answers) =>
  relevant({ interview, short: false } as Parameters<typeof relevant>[0], answers).map((q) => q.id);
const linesOf = (answers: Answers) => english.leavings(leavingPoint(homeOf(answers))).join('\n');

test('one road out brings the leaving of a device forward, and its line says so', () => {
  // Three times 1 h and two hours; four more where the road may be closed.
  const two = homeOf({ ...ventilator, 'road-out': 'more' });
  expect(lifeFirst(two)).toMatchObject({ leaveAtHours: 5, leaveAtOnce: false });
  const one = homeOf({ ...ventilator, 'road-out': 'one' });
  expect(lifeFirst(one)).toMatchObject({ leaveAtHours: 9, leaveAtOnce: true });
  expect(english.leaving(leavingForPeople(one)[0]!)).toMatch(
    /four more because only one road leads out/,
  );
  const unsure = homeOf({ ...ventilator, 'road-out': NOT_SURE });
  expect(lifeFirst(unsure)!.leaveAtHours).toBe(9);
  expect(english.leaving(leavingForPeople(unsure)[0]!)).toMatch(/do not know of a second road/);
});

test('the caution and the leaving line have one figure, also where the trip is not known', () => {
  for (const trip of [1, NOT_SURE])
    for (const road of ['one', 'more', NOT_SURE]) {
      const home = homeOf({ ...ventilator, 'trip-hours': trip, 'road-out': road });
      const caution = findings(home, []).find((one) => one.id === 'leaving-point')!;
      expect(caution.because).toMatchObject({ leaveHours: lifeFirst(home)!.leaveAtHours });
    }
});

test('with one road out a person at risk leaves at the first figure, and an order is not waited for', () => {
  const baby = { ...answersOf('birch-street'), 'people-risk': ['baby'] };
  expect(linesOf({ ...baby, 'road-out': 'more' })).toMatch(/leave by 60 °F/);
  const one = linesOf({ ...baby, 'road-out': 'one' });
  expect(one).toMatch(/leave when the room falls to 65 °F or reaches 86 °F, because only one road/);
  expect(one).not.toMatch(/leave by 60 °F/);
  expect(one).toMatch(/^Only one road leads out: go at the first warning/m);
  expect(linesOf({ ...baby, 'road-out': NOT_SURE })).toMatch(/^If only one road/m);
  expect(linesOf({ ...baby, 'road-out': 'more' })).not.toMatch(/only one road/i);
});

test('the same person is told of once, with the limits of a cold and of a hot room', () => {
  const both = { ...answersOf('birch-street'), 'people-risk': ['baby'], 'heat-cold': 'both' };
  const lines = linesOf({ ...both, 'road-out': 'more' });
  expect(lines).toContain(
    'For a person at risk: act when the room falls to 65 °F or reaches 86 °F and leave by 60 °F or 90 °F, unless',
  );
  expect(lines.match(/person at risk/g)).toHaveLength(1);
  const one = linesOf({ ...both, 'road-out': 'one' });
  expect(one).toContain(
    'leave when the room falls to 65 °F or reaches 86 °F, because only one road',
  );
  // By cold alone, that alone.
  const cold = linesOf({ ...both, 'people-risk': ['none'], 'heat-cold': 'cold' });
  expect(cold).not.toContain('86 °F');
});

test('the road is asked about only where leaving early matters', () => {
  const calm: Answers = {
    'medical-devices': ['none'],
    'can-leave': 'yes',
    hazards: ['grid-shortage'],
  };
  expect(asked(calm)).not.toContain('road-out');
  expect(asked({ ...calm, hazards: ['wildfire'] })).toContain('road-out');
  expect(asked({ ...calm, 'can-leave': 'no' })).toContain('road-out');
  expect(asked({ ...calm, 'medical-devices': ['ventilator'] })).toContain('road-out');
});

test('animals told stand at the leaving place; animals nobody told of stand nowhere', () => {
  const tower = answersOf('tower-six');
  expect(linesOf({ ...tower, animals: ['pets'] })).toMatch(/Pets go with you: ask the place/);
  expect(linesOf({ ...tower, animals: ['stay-outside'] })).toMatch(/kept outside: agree now/);
  for (const animals of [NOT_SURE, ['none']])
    expect(linesOf({ ...tower, animals })).not.toMatch(/pets go|kept outside/i);
});

test('rough power is asked about only of a pack, battery or UPS on which a motor or a device may hang', () => {
  const lamp: Answers = {
    'medical-devices': ['none'],
    'must-run': ['lights', 'phones'],
    'own-sources': ['small-ups'],
  };
  expect(asked(lamp)).not.toContain('pack-wave');
  expect(asked({ ...lamp, 'fridge-count': 1, 'must-run': ['fridge'] })).toContain('pack-wave');
  expect(asked({ ...lamp, 'medical-devices': ['cpap'] })).toContain('pack-wave');
  const generator = { ...lamp, 'medical-devices': ['cpap'], 'own-sources': ['engine-portable'] };
  expect(asked(generator)).not.toContain('pack-wave');
});

test('the line on one road stands until somebody told of two, or that it does not matter', () => {
  const { hazards: _h, 'can-leave': _c, 'road-out': _r, ...open } = answersOf('birch-street');
  expect(linesOf(open)).toMatch(/^If only one road/m);
  const calm = { ...open, hazards: ['none'], 'can-leave': 'yes' };
  expect(linesOf(calm)).not.toMatch(/only one road/i);
});
