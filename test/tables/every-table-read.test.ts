import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { expect, test } from 'vitest';

const src = join(import.meta.dirname, '../../src');
const code = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.tsx?$/.test(file))
  .map((file) => readFileSync(join(src, file), 'utf8'));

test('every table has a loader, or a part of the build, that reads it', () => {
  const tables = readdirSync(join(src, 'tables/data'), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => basename(file, '.yaml'));
  expect(tables.length).toBeGreaterThan(40);
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
