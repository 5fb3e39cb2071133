import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const household = join(root, 'test/households/birch-street.home.yaml');

/** What `npm pack` would hold of the tree as it is built now. */
let files: string[] = [];
/** A folder with a space in its name that holds these files and nothing else. */
let folder = '';

beforeAll(() => {
  const packed = spawnSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
    cwd: root,
    encoding: 'utf8',
    shell: process.platform === 'win32',
  });
  files = JSON.parse(packed.stdout)[0].files.map(({ path }: { path: string }) => path);
  folder = join(mkdtempSync(join(tmpdir(), 'lampkeeper-packed-')), 'a b');
  for (const file of files) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    cpSync(join(root, file), join(folder, file));
  }
});
afterAll(() => rmSync(dirname(folder), { recursive: true, force: true }));

test('the package holds the built program, its door and three papers, no more', () => {
  const door = ['LICENSE', 'README.md', 'package.json', 'src/bin/lampkeeper.mjs'];
  const program = readdirSync(join(root, 'dist/program')).map((file) => `dist/program/${file}`);
  expect(program).toContain('dist/program/main.mjs');
  expect(program).toContain('dist/program/LICENSES.txt');
  expect([...files].sort()).toEqual([...door, ...program].sort());
});

test('it needs no script at its install', () => {
  const { scripts } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  expect(Object.keys(scripts)).not.toEqual(
    expect.arrayContaining([expect.stringMatching(/^(pre|post)?install$/)]),
  );
});

test('no piece of it loads what could open a socket or start a program', () => {
  const loads =
    /(?:from|import|[\w$]\(|import\()\s*["'](?:node:)?(?:child_process|cluster|dgram|dns|http|http2|https|inspector|net|tls)["'](?:\)|;|$)/m;
  expect('import{spawn}from"node:child_process";').toMatch(loads);
  expect('var a=q("net");').toMatch(loads);
  const pieces = files.filter((file) => file.endsWith('.mjs'));
  expect(pieces.length).toBeGreaterThan(30);
  const guilty = pieces.filter((file) => loads.test(readFileSync(join(folder, file), 'utf8')));
  expect(guilty).toEqual([]);
});

test('it carries no faults of answers in other languages, which its schema library has', () => {
  const german = /Ung(?:ü|\\xFC)ltige/;
  expect('"Ung\\xFCltige Eingabe"').toMatch(german);
  const pieces = files.filter((file) => file.endsWith('.mjs'));
  expect(pieces.filter((file) => german.test(readFileSync(join(folder, file), 'utf8')))).toEqual(
    [],
  );
});

test('it runs from its files alone, in a path with a space, and writes nothing beside itself', () => {
  const before = readdirSync(folder, { recursive: true });
  const run = (...args: string[]) =>
    spawnSync(process.execPath, [join(folder, 'src/bin/lampkeeper.mjs'), ...args], {
      cwd: dirname(folder),
      encoding: 'utf8',
    });
  expect(run('--version')).toMatchObject({ status: 0, stderr: '' });
  expect(run('check', household)).toMatchObject({ status: 0, stderr: '' });
  expect(readdirSync(folder, { recursive: true })).toEqual(before);
});
