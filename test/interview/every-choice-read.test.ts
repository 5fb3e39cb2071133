import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Choice, Condition, Question } from '../../src/interview/questions/question';

const root = join(import.meta.dirname, '../../src');
const sources = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.tsx?$/.test(file))
  .map((file) => readFileSync(join(root, file), 'utf8'));

/** Every leaf of a condition, or of a list of them. */
function leavesOf(condition: Condition): { q: string; ids: readonly unknown[] }[] {
  if ('all' in condition) return condition.all.flatMap(leavesOf);
  if ('any' in condition) return condition.any.flatMap(leavesOf);
  const { q, ...rest } = condition;
  return [{ q, ids: Object.values(rest).flat() }];
}

const conditions = interview.questions
  .flatMap((q) => [q.when, ...(q.choices ?? []).map((choice) => choice.when)])
  .flatMap((when) => (when === undefined ? [] : leavesOf(when)));

/** Some file that names the question names the choice as well, as a word or as the key of a row; or a condition does. */
function isRead(question: Pick<Question, 'id'>, choice: Choice): boolean {
  const named = new RegExp(`'${choice.id}'|\\b${choice.id}:|\\.${choice.id}\\b`);
  return (
    conditions.some((leaf) => leaf.q === question.id && leaf.ids.includes(choice.id)) ||
    sources.some((text) => text.includes(`'${question.id}'`) && named.test(text))
  );
}

/** Hours, minutes and months are read out of the id: h16-21, m15. */
const holdsFigures = ({ id }: Choice) => /^[hm]\d/.test(id);

/** "None of these" is the list with nothing in it. */
const unread = (question: Pick<Question, 'id' | 'choices'>) =>
  (question.choices ?? [])
    .filter((choice) => choice.alone !== true && !holdsFigures(choice))
    .filter((choice) => !isRead(question, choice))
    .map((choice) => choice.id);

/** A single choice may be known by being none of the others; two such choices are one. */
const allowed = ({ kind }: Pick<Question, 'kind'>) => (kind === 'choice' ? 1 : 0);

/** Lines that nothing needs to tell apart, and why they stand. */
const alike: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'now-danger': { 'power-off': 'no danger by itself: the sitting goes on' },
  hazards: { 'grid-shortage': 'rolling cuts ask for nothing that a longer outage does not' },
  'goal-gap': { 'quarter-hour': 'time enough for a start by hand, as the last line is' },
  'water-source': { town: 'no pump of their own, as with a tank' },
  waste: { sewer: 'no pump of their own, as with a septic tank by gravity' },
  'engine-stood': { 'never-ran': 'it stood nowhere wrong' },
  'battery-backup': { 'never-tried': 'never tried counts as feeding nothing' },
};

/** Questions whose lines are read all together, and what holds them. */
const readTogether: Readonly<Record<string, string>> = {
  'must-run': 'each is a LoadKey: test/home/ranked-loads.test.ts',
  'nice-run': 'each is a LoadKey: test/home/ranked-loads.test.ts',
  'quote-kind': 'each is a kind of route: test/routes/every-kind.test.ts',
};

function idle(question: Question): string[] {
  if (question.id in readTogether) return [];
  const left = unread(question).filter((id) => !(id in (alike[question.id] ?? {})));
  return left.length > allowed(question) ? left : [];
}

test('every choice is told apart from the others by something', () => {
  const found = interview.questions
    .filter((question) => idle(question).length > 0)
    .map((question) => `${question.id}: ${idle(question).join(', ')}`);
  expect(
    found,
    'No code and no condition names these choices, so that to choose one changes nothing: read it with facts.is or facts.has, drop the line, or say under `alike` why it stands.',
  ).toEqual([]);
});

test('no choice is excused that is read', () => {
  const needless = Object.entries(alike).flatMap(([id, choices]) => {
    const question = interview.questions.find((one) => one.id === id);
    const left = question === undefined ? [] : unread(question);
    return Object.keys(choices).filter((choice) => !left.includes(choice));
  });
  expect(needless, 'Take these out of `alike`').toEqual([]);
});

test('a line that nothing reads is found', () => {
  const heat = interview.questions.find((one) => one.id === 'heat-second')!;
  const lines = ['moonlight', 'starlight'].map((id) => ({ id, label: 'By the light of the sky' }));
  expect(idle({ ...heat, choices: [...heat.choices!, ...lines] })).toContain('moonlight');
});
