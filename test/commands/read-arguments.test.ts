import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { COMMANDS } from '../../src/commands/command-table';
import { readArguments } from '../../src/commands/read-arguments';

const here = process.cwd();
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'lampkeeper-words-'));
  writeFileSync(join(folder, 'kim.home.yaml'), '');
  process.chdir(folder);
});
afterAll(() => {
  process.chdir(here);
  rmSync(folder, { recursive: true });
});

test('a name finds its home file, with each command that takes a home', () => {
  expect(readArguments(['kim'])).toMatchObject({ command: 'interview', rest: ['kim.home.yaml'] });
  expect(readArguments(['plan', 'kim'])).toMatchObject({ rest: ['kim.home.yaml'] });
  expect(readArguments(['check', 'kim'])).toMatchObject({ rest: ['kim.home.yaml'] });
  expect(readArguments(['calc', 'kim'])).toMatchObject({ rest: ['kim'] });
});

test('a folder of that name hides no home, and a file does', () => {
  writeFileSync(join(folder, 'lee.home.yaml'), '');
  mkdirSync(join(folder, 'lee'));
  expect(readArguments(['plan', 'lee'])).toMatchObject({ rest: ['lee.home.yaml'] });
  writeFileSync(join(folder, 'mo.home.yaml'), '');
  writeFileSync(join(folder, 'mo'), '');
  expect(readArguments(['plan', 'mo'])).toMatchObject({ rest: ['mo'] });
});

test('the second word of explain is a figure, also where a home has its name', () => {
  writeFileSync(join(folder, 'price.home.yaml'), '');
  expect(readArguments(['explain', 'kim', 'price'])).toMatchObject({
    rest: ['kim.home.yaml', 'price'],
  });
});

test('a word that is neither a command nor a home begins nothing, and says how to begin', () => {
  for (const words of [['kin'], ['interview', 'kin'], ['plann']]) {
    const read = readArguments(words);
    expect(read).toHaveProperty('wrong');
    expect('wrong' in read && read.wrong).toMatch(
      /no \w+\.home\.yaml.*begin a new home: lampkeeper/,
    );
  }
});

test('a command stays a command where a home has its name', () => {
  writeFileSync(join(folder, 'plan.home.yaml'), '');
  expect(readArguments(['plan'])).toMatchObject({ command: 'plan', rest: [] });
  expect(COMMANDS).toContain('plan');
});

test('a word with the end of a line in it is refused, and said back on one line', () => {
  for (const words of [
    ['check', 'a\nb.home.yaml'],
    ['plan', 'kim', '--out', 'a\rb'],
  ]) {
    const read = readArguments(words);
    expect(read).toHaveProperty('wrong');
    expect('wrong' in read && read.wrong).toMatch(/^No word .*"a<U\+000[AD]>b/);
  }
});
