import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { type Answers, NOT_SURE } from '../../src/interview/answers';
import { begin } from '../../src/interview/begin';
import type { Condition } from '../../src/interview/questions/question';
import { offered, questionAt } from '../../src/interview/questions/relevant';
import type { Context } from '../../src/interview/state';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { badToGood, noneLast } from './bad-to-good';

const context: Context = {
  interview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'my-home',
};
const offers = (id: string, answers: Answers) =>
  offered(context, { ...begin(context, {}), answers }, questionAt(context, id)).map(
    (one) => one.id,
  );

/** What was told, and a choice of another question that would contradict it. */
const contradictions: readonly (readonly [told: Answers, question: string, choice: string])[] = [
  [{ 'cook-main': 'electric' }, 'cook-without', 'gas-match'],
  [{ 'cook-main': 'none' }, 'must-run', 'cooking'],
  [{ 'heat-main': 'gas-furnace' }, 'gas-supply', 'none'],
  [{ 'heat-main': 'none' }, 'must-run', 'heat'],
  [{ 'heat-main': 'wood' }, 'must-run', 'heat'],
  [{ 'heat-main': 'gas-furnace' }, 'cool-main', 'heat-pump'],
  [{ 'heat-main': 'gas-furnace' }, 'freeze-risk', 'boiler-loop'],
  [{ 'cool-main': 'none' }, 'must-run', 'cool'],
  [{ 'cool-main': 'none' }, 'big-loads', 'second-cooling'],
  [{ 'big-loads': ['hot-tub', 'washer'] }, 'freeze-risk', 'hot-tub'],
  [{ 'big-loads': ['washer'] }, 'freeze-risk', 'hot-tub'],
  [{ 'freeze-risk': ['hot-tub'] }, 'big-loads', 'hot-tub'],
  [{ 'water-source': 'town' }, 'must-run', 'well'],
  [{ sump: 'none' }, 'must-run', 'sump'],
  [{ 'fridge-count': 0 }, 'must-run', 'fridge'],
  [{ 'freezer-count': 0 }, 'must-run', 'freezer'],
  [{ 'internet-kind': 'none' }, 'must-run', 'internet'],
  [{ 'water-heater': 'gas-pilot' }, 'must-run', 'water-heater'],
  [{ 'home-kind': 'house' }, 'heat-main', 'building'],
  [{ 'home-kind': 'house' }, 'water-heater', 'building'],
  [{ 'home-kind': 'apartment' }, 'own-sources', 'engine-standby'],
  [{ 'home-kind': 'apartment' }, 'own-sources', 'solar'],
  [{ 'home-kind': 'apartment' }, 'own-sources', 'home-battery'],
  [{ 'medical-devices': ['none'] }, 'outage-failed', 'medical'],
  [{ 'medical-devices': ['none'] }, 'outage-losses', 'medicine'],
  [{ 'must-run': ['fridge', 'cool'] }, 'nice-run', 'fridge'],
  [{ 'must-run': ['fridge', 'cool'] }, 'nice-run', 'cool'],
];

test('a hot tub is one whichever question was told of it', () => {
  const tubs = (answers: Answers) =>
    homeFromAnswers(interview, answers, '2026-01-01').loads.filter(({ id }) => id === 'hot-tub')
      .length;
  expect(tubs({ 'big-loads': ['hot-tub'] })).toBe(1);
  expect(tubs({ 'freeze-risk': ['hot-tub'] })).toBe(1);
  expect(tubs({ 'freeze-risk': ['hot-tub'], 'big-loads': ['hot-tub'] })).toBe(1);
  expect(tubs({ 'freeze-risk': ['none'], 'big-loads': ['none'] })).toBe(0);
});

describe('a choice that contradicts what was told', () => {
  test.each(contradictions)('%o is not met with %s: %s', (told, question, choice) => {
    expect(offers(question, told)).not.toContain(choice);
    // It is a choice of that question all the same, for a home that told something else.
    expect(questionAt(context, question).choices!.map(({ id }) => id)).toContain(choice);
  });

  test('"not sure" rules nothing out', () => {
    expect(offers('gas-supply', { 'heat-main': NOT_SURE })).toContain('none');
    expect(offers('cook-without', { 'cook-main': NOT_SURE })).toContain('gas-match');
    expect(offers('own-sources', { 'home-kind': NOT_SURE })).toContain('solar');
    expect(offers('must-run', {})).toEqual(expect.arrayContaining(['fridge', 'freezer', 'sump']));
  });

  test('a danger can still be told, whatever was told before', () => {
    expect(offers('transfer-existing', { 'engine-connect': 'inlet' })).toContain('none');
    expect(offers('transfer-existing', { 'panel-kind': 'fuses' })).toContain('interlock');
    expect(offers('battery-place', { 'flood-history': 'inside' })).toContain('basement');
    expect(offers('cook-without', { 'cook-main': 'electric' })).toContain('charcoal-indoors');
  });
});

test('"none of these" stands below the rest where it is not what most would say', () => {
  const first = interview.questions.filter(({ choices }) => choices?.[0]?.alone === true);
  const named = first.map(({ id }) => id);
  // What most homes say, or where the careful branch stands first.
  const allowed = ['outage-failed', 'hazards', 'device-team', 'second-source', 'animals'];
  const usual = [
    'freeze-risk',
    'outage-losses',
    'own-sources',
    'other-aims',
    'permissions',
    'association-rule',
    'bill-lines',
  ];
  expect(
    named.filter((id) => ![...allowed, ...usual, ...Object.keys(badToGood)].includes(id)),
  ).toEqual([]);
  for (const id of [
    'must-run',
    'must-also',
    'nice-run',
    'big-loads',
    'cook-without',
    ...noneLast,
  ]) {
    const choices = questionAt(context, id).choices!;
    expect({ id, first: choices[0]!.alone }).toEqual({ id, first: undefined });
  }
});

/** Questions a condition names. */
const namesIn = (condition: Condition | undefined): string[] => {
  if (condition === undefined) return [];
  if ('all' in condition) return condition.all.flatMap(namesIn);
  return 'any' in condition ? condition.any.flatMap(namesIn) : [condition.q];
};

test('the usual thing to keep running comes first, and rare ones last', () => {
  const all = questionAt(context, 'must-run').choices!.map(({ id }) => id);
  expect(all.slice(0, 4)).toEqual(['fridge', 'heat', 'lights', 'phones']);
  expect(all.at(-1)).toBe('none');
  // Nothing here waits for a question that this one decides.
  const later = questionAt(context, 'must-run').choices!.flatMap(({ when }) => namesIn(when));
  expect(later).not.toContain('nice-run');
});
