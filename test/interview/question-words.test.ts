import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Question } from '../../src/interview/questions/question';
import { readingGrade } from './reading-grade';

const { questions } = interview;

/** What "not sure" must count as where a wrong guess could hurt someone. */
const careful: Record<string, string | number | string[]> = {
  'device-battery-hours': 0,
  'device-battery-tested': 'no',
  'second-source': ['none'],
  'heat-cold': 'both',
  'battery-backup': 'never-tried',
  'can-leave': 'with-help',
  'leave-place': 'none',
  'home-kind': 'townhouse',
  'flood-history': 'inside',
  'heat-second': 'none',
  'pack-wave': 'modified',
  'phone-works': 'neither',
  'road-out': 'one',
  'stairlift-battery': 'no',
  'ventilator-hours': 24,
  'supply-volts': 'v120-240',
  'transfer-existing': 'not-known',
  'solar-in-outage': 'never-tried',
  'vehicle-kind': 'engine',
  'co-alarm': 'none',
  'engine-place': 'none',
  'gasoline-gallons': 5,
  'gasoline-place': 'inside',
};

/** Nothing may be assumed about these: the rules take their careful branch. */
const neverAssumed = [
  'now-danger',
  'people-risk',
  'medical-devices',
  'device-safe-hours',
  'access-lifts',
  'cook-without',
  'main-amps',
  'panel-kind',
  'panel-signs',
  'wiring-signs',
  'own-sources',
  'engine-neutral',
  'engine-connect',
  'engine-stood',
  'battery-kind',
  'battery-place',
  'battery-place-range',
  'who-works',
];

function allText(q: Question): string {
  const choices = (q.choices ?? []).flatMap((c) => [c.label, c.actNow ?? '']);
  return [q.ask, q.hint, q.why, q.find, q.says, q.unsure.because, ...choices].join(' \n ');
}

test('each question asks one thing, in words no other question uses', () => {
  for (const { id, ask } of questions) expect(ask, id).toMatch(/^[^?]+\?$/);
  expect(new Set(questions.map((q) => q.ask)).size).toBe(questions.length);
  expect(new Set(questions.map((q) => q.says)).size).toBe(questions.length);
});

test('no question hides a second one behind "and" or "or to"', () => {
  const second = /\band (has|have|does|is|are|on|how|what|where)\b|, or to\b/;
  for (const { id, ask } of questions) expect(ask, id).not.toMatch(second);
});

test('a question, a hint and a choice speak of a doctor or nurse, not of a clinician', () => {
  for (const { id, ask, hint, choices = [] } of questions) {
    expect([ask, hint, ...choices.map((c) => c.label)].join(' '), id).not.toMatch(/clinician/i);
  }
});

test('a hint is one short line with no full stop', () => {
  for (const { id, hint } of questions) {
    expect(hint, id).not.toMatch(/[.!]$/);
    expect(hint.length, id).toBeLessThanOrEqual(100);
  }
});

test('no text scolds or begs', () => {
  for (const q of questions) {
    expect(allText(q), q.id).not.toMatch(/\b(please|sorry|invalid|oops|illegal|forbidden)\b/i);
  }
});

test('a choice fits on three lines of a narrow window', () => {
  const labels = questions.flatMap((q) => q.choices ?? []).map((c) => c.label);
  for (const label of labels) expect(label.length, label).toBeLessThanOrEqual(110);
});

test('not sure takes the careful branch wherever a guess could hurt', () => {
  const safety = questions.filter((q) => q.safety);
  const assumed = safety.filter((q) => q.unsure.assume !== null);
  expect(Object.fromEntries(assumed.map((q) => [q.id, q.unsure.assume]))).toEqual(careful);
  const open = safety.filter((q) => q.unsure.assume === null).map((q) => q.id);
  expect(open).toEqual(neverAssumed);
});

test('what must be done at once is one instruction a line', () => {
  const urgent = questions.flatMap((q) => q.choices ?? []).filter((c) => c.actNow !== undefined);
  expect(urgent.length).toBeGreaterThanOrEqual(2);
  for (const { id, actNow = '' } of urgent) {
    const lines = actNow.trim().split('\n');
    expect(lines.length, id).toBeGreaterThan(1);
    expect(lines.length, id).toBeLessThanOrEqual(5);
    for (const line of lines) expect(line.match(/\.( |$)/g), line).toHaveLength(1);
  }
});

test('an eighth grader can read the questions', () => {
  const grades = questions.map((q) => readingGrade([q.ask, q.why, q.find].join(' ')));
  for (const [at, grade] of grades.entries()) {
    expect(grade, questions[at]!.id).toBeLessThanOrEqual(11);
  }
  expect(grades.reduce((sum, grade) => sum + grade, 0) / grades.length).toBeLessThanOrEqual(8);
});
