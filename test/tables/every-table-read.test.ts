import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const src = join(import.meta.dirname, '../../src');
const code = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.tsx?$/.test(file))
  .map((file) => readFileSync(join(src, file), 'utf8'));

test('every table has a loader, or a part of the build, that reads it', () => {
  const tables = readdirSync(join(src, 'tables/data'))
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => file.replace(/\.yaml$/, ''));
  const unread = tables.filter(
    (name) =>
      !code.some(
        (text) => text.includes(`'#compiled/tables/${name}.js'`) || text.includes(`'${name}.csv'`),
      ),
  );
  expect(
    unread,
    'Import #compiled/tables/NAME.js in a src/tables/TOPIC.ts that gives it a row type, or take the table away',
  ).toEqual([]);
});
