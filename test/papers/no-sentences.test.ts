import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { sentencesIn } from '../sentences-in';

/** What stands in a file of the plan for want of a figure: the same in every language, and part of its form. */
const formOfThePlanFile = /^plan-file\//;

/** Tags, styles and the line by which a calendar names its maker. */
const markup = /<[a-z!/]|@page|PRODID/;

const src = join(import.meta.dirname, '../../src/papers');
const files = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter(
  (file) => /\.tsx?$/.test(file) && !formOfThePlanFile.test(file),
);

test('a paper is a format: its sentences stand in every language', () => {
  expect(files.length).toBeGreaterThan(40);
  const said = files.flatMap((file) =>
    sentencesIn(readFileSync(join(src, file), 'utf8'))
      .filter((literal) => !markup.test(literal))
      .map((literal) => `${file}: ${literal}`),
  );
  expect(
    said,
    'Put each into src/words/en (household/ or sheets/), into every other language beside it, and take it from `words`',
  ).toEqual([]);
});
