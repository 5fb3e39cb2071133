import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');
const filesIn = (room: string) =>
  readdirSync(join(root, room), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => ({ file, text: readFileSync(join(root, room, file), 'utf8') }));

const physics = filesIn('src/physics').map(({ file }) => file.replace(/\.ts$/, ''));
const named = (files: readonly { file: string; text: string }[], formula: string) =>
  files.some(({ text }) => new RegExp(`/${basename(formula)}'`).test(text));

/** Held where the home or the route that calls them is tested. */
const throughTheirCaller: readonly string[] = ['heat-pump-share', 'service-load/share-over-legs'];

test('every formula is used by the program', () => {
  const src = filesIn('src');
  const idle = physics.filter((formula) => !named(src, formula));
  expect(
    idle,
    'Call it from home, routes, outage or bill, list it in src/commands/calc, or take it away',
  ).toEqual([]);
});

test('every formula is tested by itself or through one that calls it', () => {
  const tests = filesIn('test');
  const inside = filesIn('src/physics');
  expect(
    physics
      .filter((formula) => !named([...tests, ...inside], formula))
      .filter((formula) => !throughTheirCaller.includes(formula)),
    'Hold it to a published worked example under test/against',
  ).toEqual([]);
});

test('every computation of `calc` is in the registry', () => {
  const registry = readFileSync(join(root, 'src/commands/calc/registry.ts'), 'utf8');
  const all = readdirSync(join(root, 'src/commands/calc/computations')).filter(
    (file) => !file.endsWith('-inputs.ts'),
  );
  expect(
    all.filter((file) => !registry.includes(`./computations/${basename(file, '.ts')}'`)),
    'Name it in src/commands/calc/registry.ts',
  ).toEqual([]);
});
