import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { compileTables } from '../../src/build/compile-tables';

const folder = mkdtempSync(join(tmpdir(), 'tables-'));
afterAll(() => rmSync(folder, { recursive: true }));

const table = `about: Made up for a test.
unit: { value: each }
source: { title: Made up, publisher: nobody, standing: judgement }
checked: '2026-11-28'
recheckAfter: '2030-01-01'
rows:
  - { id: one, value: 1 }
`;

test('a table stands in a room of its own, its rows beside it, and is found by its name alone', () => {
  mkdirSync(join(folder, 'in/room'), { recursive: true });
  writeFileSync(join(folder, 'in/plain.yaml'), table);
  writeFileSync(
    join(folder, 'in/room/listed.yaml'),
    `${table.split('rows:')[0]}rowsFrom: listed.csv\n`,
  );
  writeFileSync(join(folder, 'in/room/listed.csv'), 'id,value\ntwo,2\n');
  compileTables(join(folder, 'in'), join(folder, 'out'));
  expect(readdirSync(join(folder, 'out')).filter((name) => name.endsWith('.js'))).toEqual([
    'listed.js',
    'plain.js',
  ]);
});

test('two tables of one name are refused, and both are named', () => {
  writeFileSync(join(folder, 'in/room/plain.yaml'), table);
  expect(() => compileTables(join(folder, 'in'), join(folder, 'out'))).toThrow(
    /room\/plain\.yaml: plain\.yaml has that name too/,
  );
});
