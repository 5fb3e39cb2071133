import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';

/** Rooms of analysis below the plan. */
const belowPlan = [
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
];

/**
 * Which rooms a room may import from, itself always included. `home` takes only types from `interview`;
 * nothing but `commands` (the command line) and `build` imports `faces`. Words take types of the plan and below, and values
 * of `quantity` and `kinds` alone; papers take values of the plan and words too.
 */
const arrows: Record<string, readonly string[]> = {
  quantity: [],
  kinds: [],
  tables: ['quantity'],
  physics: ['quantity'],
  interview: ['quantity'],
  home: ['kinds', 'quantity', 'tables', 'physics', 'interview'],
  outage: ['home', 'quantity', 'tables', 'physics', 'interview'],
  bill: ['kinds', 'home', 'quantity', 'tables', 'physics', 'interview'],
  rules: ['kinds', 'home', 'quantity', 'tables', 'physics', 'interview'],
  routes: ['kinds', 'home', 'outage', 'bill', 'quantity', 'tables', 'physics', 'interview'],
  advice: belowPlan.filter((room) => room !== 'advice'),
  plan: belowPlan,
  words: ['plan', ...belowPlan],
  papers: ['plan', 'words', ...belowPlan],
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
];

/** The form of a tariff file, which a plan file holds whole: said once for both. */
const quoted = 'bill/tariff/tariff-schema';

const src = resolve(import.meta.dirname, '../src');

interface Import {
  readonly file: string;
  readonly from: string;
  readonly to: string;
  readonly isType: boolean;
  readonly target: string;
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
      target: relative(src, target),
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

test('words and papers take types of the analysis, and nothing that decides', () => {
  const open: Record<string, readonly string[]> = {
    words: ['quantity', 'kinds'],
    papers: ['quantity', 'kinds', 'plan', 'words'],
  };
  const wrong = all
    .filter(
      ({ from, to, target, isType }) =>
        from in open && !isType && to !== from && !open[from]!.includes(to) && target !== quoted,
    )
    .map(({ file, target }) => `${file} imports ${target}`);
  expect(wrong, 'Put what it asks for into the plan (src/plan), as a code or a figure').toEqual([]);
});

test('a language leans on no other one', () => {
  const inLanguage = (path: string) => /^words\/(\w\w)\b/.exec(path)?.[1];
  const wrong = all.filter(({ file, target }) => {
    const [own, other] = [inLanguage(file), inLanguage(target)];
    return own !== undefined && other !== undefined && own !== other;
  });
  expect(
    wrong.map(({ file, target }) => `${file} imports ${target}`),
    'Say it in this language too; what is the same in all goes beside the folders, into src/words',
  ).toEqual([]);
});

test('papers are handed their words, and know no language', () => {
  const spoken = /^words\/\w\w\b|^quantity\/(format-quantity|say-chance)/;
  const wrong = all.filter(({ from, target }) => from === 'papers' && spoken.test(target));
  expect(
    wrong.map(({ file }) => file),
    'Take `words: Words` as an argument, and put the function into every src/words/LANGUAGE/index.ts',
  ).toEqual([]);
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
    'words',
    'papers',
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
