import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';

/**
 * Which rooms a room may import from, itself always included. `home` takes only types from `interview`;
 * nothing but `commands` (the command line) and `build` imports `faces`.
 */
const arrows: Record<string, readonly string[]> = {
  quantity: [],
  kinds: [],
  tables: ['quantity'],
  physics: ['quantity'],
  interview: ['quantity'],
  home: ['kinds', 'quantity', 'tables', 'physics', 'interview'],
  outage: ['home', 'quantity', 'tables', 'physics', 'interview'],
  bill: ['home', 'quantity', 'tables', 'physics', 'interview'],
  rules: ['kinds', 'home', 'quantity', 'tables', 'physics', 'interview'],
  routes: ['kinds', 'home', 'outage', 'bill', 'quantity', 'tables', 'physics', 'interview'],
  advice: [
    'kinds',
    'routes',
    'outage',
    'bill',
    'rules',
    'home',
    'interview',
    'quantity',
    'tables',
    'physics',
  ],
  plan: [
    'advice',
    'kinds',
    'routes',
    'outage',
    'bill',
    'rules',
    'home',
    'interview',
    'quantity',
    'tables',
    'physics',
  ],
  faces: ['interview', 'plan', 'quantity'],
  store: ['interview', 'quantity'],
};

/** Rooms whose imports from another room must be types only. */
const typesOnly: readonly (readonly [string, string])[] = [
  ['home', 'interview'],
  ['routes', 'interview'],
  ['rules', 'interview'],
  ['outage', 'interview'],
  ['bill', 'interview'],
  ['advice', 'interview'],
];

const src = resolve(import.meta.dirname, '../src');

interface Import {
  readonly file: string;
  readonly from: string;
  readonly to: string;
  readonly isType: boolean;
}

function files(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return files(path);
    return /\.(ts|tsx)$/.test(name) ? [path] : [];
  });
}

function importsOf(path: string): Import[] {
  const text = readFileSync(path, 'utf8');
  const found = text.matchAll(
    /(import|export)\s+(type\s+)?([^'";]*?from\s+)?['"](\.[^'"]+)['"]|import\(\s*['"](\.[^'"]+)['"]/g,
  );
  return [...found].map((match) => {
    const target = resolve(dirname(path), match[4] ?? match[5]!);
    const names = match[3] ?? '';
    const allTypes =
      /^\{/.test(names.trim()) &&
      names
        .replace(/[{}]|from/g, '')
        .split(',')
        .every((n) => n.trim() === '' || n.trim().startsWith('type '));
    return {
      file: relative(src, path),
      from: roomOf(path),
      to: roomOf(target),
      isType: match[2] !== undefined || allTypes,
    };
  });
}

function roomOf(path: string): string {
  return relative(src, path).split(/[\\/]/)[0]!.replace(/\.ts$/, '');
}

const all = files(src).flatMap(importsOf);

test('the source has rooms and imports to look at', () => {
  expect(files(src).length).toBeGreaterThan(200);
  expect(all.length).toBeGreaterThan(500);
});

test('no room imports from a room its arrows do not reach', () => {
  const wrong = all.filter(
    ({ from, to }) => from in arrows && to !== from && !arrows[from]!.includes(to),
  );
  expect(wrong.map(({ file, to }) => `${file} imports ${to}`)).toEqual([]);
});

test('answers are types to the rooms above the interview', () => {
  const wrong = all.filter(
    ({ from, to, isType }) => !isType && typesOnly.some(([a, b]) => a === from && b === to),
  );
  expect(wrong.map(({ file, to }) => `${file} imports values of ${to}`)).toEqual([]);
});

test('only the command line imports faces, and only it and the build import commands', () => {
  const faces = all.filter(
    ({ from, to }) => to === 'faces' && !['faces', 'commands', 'main'].includes(from),
  );
  const commands = all.filter(
    ({ from, to }) => to === 'commands' && !['commands', 'main'].includes(from),
  );
  expect([...faces, ...commands].map(({ file }) => file)).toEqual([]);
});

test('the pure rooms read no clock, no chance, no environment and no file', () => {
  const impure = /\bDate\.now\(|new Date\(\)|Math\.random\(|process\.(env|argv|cwd)|from 'node:fs'/;
  const pure = [
    'quantity',
    'tables',
    'physics',
    'interview',
    'home',
    'routes',
    'outage',
    'bill',
    'rules',
    'advice',
    'plan',
  ];
  const wrong = files(src).filter(
    (path) => pure.includes(roomOf(path)) && impure.test(readFileSync(path, 'utf8')),
  );
  expect(wrong.map((path) => relative(src, path))).toEqual([]);
});

test('every room named in the arrows exists, and every room in the source is named', () => {
  const rooms = readdirSync(src, { withFileTypes: true })
    .filter((e) => e.isDirectory())
    .map((e) => e.name);
  expect(rooms.sort()).toEqual([...Object.keys(arrows), 'bin', 'build', 'commands'].sort());
});

test('of the bill, a tariff knows no dispatch, and neither knows the costs over the years', () => {
  const inside = files(join(src, 'bill')).flatMap((path) =>
    [...readFileSync(path, 'utf8').matchAll(/from '(\.\.\/\w+)\//g)].map((match) => ({
      file: relative(src, path),
      from: relative(join(src, 'bill'), path).split(/[\\/]/)[0]!,
      to: match[1]!.slice(3),
    })),
  );
  const drawers: Record<string, readonly string[]> = {
    tariff: [],
    dispatch: ['tariff'],
    lifecycle: ['tariff', 'dispatch'],
  };
  const between = inside.filter(({ from, to }) => from in drawers && to in drawers);
  expect(between.length).toBeGreaterThan(5);
  expect(between.filter(({ from, to }) => !drawers[from]!.includes(to))).toEqual([]);
});
