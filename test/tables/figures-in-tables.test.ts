import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { practiceFigures } from '../../src/tables/practice-figures';

const root = join(import.meta.dirname, '../../src');
const rooms = ['home', 'outage', 'bill', 'routes', 'rules', 'advice', 'plan'];
const filesIn = (room: string) =>
  readdirSync(join(root, room), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => join(room, file));

/** A comment that says a figure is common, or from memory, and the constant right below it that holds a number. */
const FIGURE_IN_CODE =
  /\/\*\*(?:(?!\*\/)[\s\S])*(?:common practice|from memory|no source)(?:(?!\*\/)[\s\S])*\*\/\n(?:export )?const \w+[^=\n]*= [^;]*\d[\d._]*[^;]*;/gi;

const inCode = (text: string) =>
  (text.match(FIGURE_IN_CODE) ?? []).filter((found) => !found.includes('practice'.concat('(')));

test('a figure of the trade stands in a table and not in code', () => {
  const found = rooms
    .flatMap(filesIn)
    .filter((file) => inCode(readFileSync(join(root, file), 'utf8')).length > 0);
  expect(
    found,
    'Give the figure a row in tables/data/practice-figures.yaml and read it with practice(id)',
  ).toEqual([]);
});

test('the scan sees a figure in code', () => {
  expect(
    inCode('/** Dip at which contactors let go. Common practice, no source. */\nconst DIP = 30;'),
  ).toHaveLength(1);
  expect(
    inCode("/** Dip. Common practice, no source. */\nconst DIP = practice('contactor-drop-dip');"),
  ).toHaveLength(0);
});

test('every figure of practice is read, lies in its range and says whose it is', () => {
  const code = [...rooms, 'tables']
    .flatMap(filesIn)
    .map((file) => readFileSync(join(root, file), 'utf8'))
    .join('\n');
  const { rows } = practiceFigures;
  expect(rows.filter(({ id }) => !code.includes(`'${id}'`)).map(({ id }) => id)).toEqual([]);
  expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
  for (const { id, value, low = value, high = value, standing, source } of rows) {
    expect(low <= value && value <= high, id).toBe(true);
    expect(source.length, id).toBeGreaterThan(4);
    if (standing === 'practice' && !source.includes('makers'))
      expect(source, id).toMatch(/no source$/);
  }
});
