import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { answerName } from '../src/words/en/explain/answer-names';
import { sentencesIn } from './sentences-in';

/** Rooms that analyze: what they hand on are ids, codes and figures, and `words` makes the sentences. */
const rooms = [
  'kinds',
  'tables',
  'physics',
  'home',
  'outage',
  'bill',
  'routes',
  'rules',
  'advice',
  'plan',
];

/** Files of which no line is counted, each for a reason. */
const reasons: Readonly<Record<string, string>> = {
  'rules/rule.ts': 'who does a piece of work is a code of words',
  'tables/rules.ts': 'the same codes, as the table has them',
  'tables/table-schema.ts': 'a fault in a table, for whoever writes one',
};

const files = rooms.flatMap((room) =>
  readdirSync(join('src', room), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => `${room}/${file}`)
    .filter((file) => !(file in reasons)),
);

test('no analysis makes a sentence: hand on a code with its figures, and say it in words/en', () => {
  const found = Object.fromEntries(
    files
      .map((file) => [file, sentencesIn(readFileSync(join('src', file), 'utf8'))] as const)
      .filter(([, sentences]) => sentences.length > 0),
  );
  expect(found).toEqual({});
});

test('every file that is not counted is there, and has what its reason speaks of', () => {
  for (const file of Object.keys(reasons))
    expect(sentencesIn(readFileSync(join('src', file), 'utf8')).length, file).toBeGreaterThan(0);
});

test('the scan sees what it is there to see', () => {
  expect(sentencesIn("const why = 'the budget you named is less';")).toHaveLength(1);
  expect(sentencesIn('return `about $'.concat('{Math.round(hours)} h from full`;'))).toHaveLength(
    1,
  );
  expect(sentencesIn("timesFigure(watts, 2, { name: 'running power of the pump' });")).toHaveLength(
    1,
  );
  expect(sentencesIn("makeLoad('well', { name: 'A well pump' });")).toHaveLength(1);
  expect(sentencesIn("const heaterNames = { boiler: 'the hot boiler' };")).toHaveLength(1);
  expect(sentencesIn("return { code: 'over-budget', hours };")).toHaveLength(0);
  expect(sentencesIn("const source = { kind: 'told', label: 'you told us so' };")).toHaveLength(1);
  expect(sentencesIn("formula('power x hours a day', [watts])")).toHaveLength(1);
  expect(sentencesIn("formula('hours', [], 'common practice, no source')")).toHaveLength(1);
  expect(sentencesIn("const table = { cite: 'common practice, no source' };")).toHaveLength(1);
  expect(sentencesIn("throw new RangeError('hours must be above zero');")).toHaveLength(0);
});

/** Rooms where nothing is named in words; `physics` names what its faults speak of. */
const codedNames = ['kinds', 'tables', 'home', 'outage', 'bill', 'routes', 'rules', 'advice'];

test('nothing of these rooms is named in words: give it a code of quantity/figure-name.ts or home/loads/load-name.ts', () => {
  const named = files
    .filter((file) => codedNames.includes(file.split('/')[0]!))
    .filter((file) =>
      /\b(?:name|label|called): ['`][^'`\n]*[ A-Z]/.test(readFileSync(join('src', file), 'utf8')),
    );
  expect(named).toEqual([]);
});

test('an answer that becomes a figure has a name in words/en/explain/answer-names.ts', () => {
  const asked = files.flatMap((file) => [
    ...readFileSync(join('src', file), 'utf8').matchAll(
      /\b(?:asFigure\(context|answerFigure\(facts, widths), '([\w-]+)'/g,
    ),
  ]);
  expect(asked.length).toBeGreaterThan(15);
  expect(asked.map(([, id]) => id!).filter((id) => answerName(id) === '')).toEqual([]);
});
