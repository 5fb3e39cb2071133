import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import interview from '#compiled/questions.js';
import { forgetCommand } from '../../src/commands/forget-command';
import { type Arguments, readArguments } from '../../src/commands/read-arguments';
import { realDisk } from '../../src/store/disk';
import { HomeKeeper } from '../../src/store/home-keeper';
import { removeFiles } from '../../src/store/home-traces';
import { lockHome } from '../../src/store/sitting-lock';
import { writePapers } from '../../src/store/write-papers';

const here = process.cwd();
let folder: string;
let said: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lampkeeper-forget-'));
  process.chdir(folder);
  said = '';
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    said += String(text);
    return true;
  });
});
afterEach(() => {
  process.chdir(here);
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

const forget = (...words: string[]) =>
  forgetCommand(readArguments(['forget', ...words]) as Arguments);

function begin(name: string, papers = '.'): void {
  const answers = { 'home-name': name, 'people-count': 2 };
  new HomeKeeper(`${name}.home.yaml`, interview).keep({ answers, asOf: '2026-11-25' });
  const paper = (file: string, comment: (text: string) => string) => ({
    file,
    text: 'a\n',
    comment,
  });
  writePapers(
    papers,
    [
      paper(`${name}.plan.yaml`, (text) => `# ${text}`),
      paper(`${name}.plan.md`, (text) => `<!-- ${text} -->`),
      paper(`${name}.quote.html`, (text) => `<!-- ${text} -->`),
      paper(`${name}.year.ics`, (text) => `X-LAMPKEEPER-NOTE:${text.replaceAll(';', '\\;')}`),
    ],
    false,
  );
}

test('a home goes with its papers, its copy to share and all that was begun, and nothing else does', async () => {
  begin('kim');
  begin('kim.b');
  begin('kimberly');
  writeFileSync('kim-to-share.home.yaml', '');
  writeFileSync('kim.home.yaml.new-4000000', 'half');
  writeFileSync('kim.plan.md.new-4000000', 'half');
  writeFileSync('.kim.home.yaml.open', '4000000\n');
  writeFileSync('kim.notes.md', 'my own');
  writeFileSync('kim.jpg', 'a picture');
  const before = readdirSync('.').filter(
    (file) => file.startsWith('kim.b') || file.startsWith('kimb'),
  );
  expect(await forget('kim', '--yes')).toBe(0);
  expect(readdirSync('.').sort()).toEqual([...before, 'kim.jpg', 'kim.notes.md'].sort());
  expect(said).toContain('kim.year.ics');
});

test('papers in another folder go where it is named, changed since or not', async () => {
  mkdirSync('papers');
  begin('kim', 'papers');
  writeFileSync('papers/other.md', '');
  expect(await forget('kim', '--out', 'papers', '--yes')).toBe(0);
  expect(readdirSync('papers')).toEqual(['other.md']);
});

test('it says first what would go, and with nobody to ask removes nothing', async () => {
  begin('kim');
  writeFileSync('kim.notes.md', 'my own');
  const all = readdirSync('.');
  expect(await forget('kim', '--dry-run')).toBe(0);
  expect(said).toMatch(/Would remove:\n {2}kim\.home\.yaml\n/);
  expect(said).toContain('left alone: kim.notes.md');
  const { isTTY } = process.stdin;
  process.stdin.isTTY = false;
  try {
    expect(await forget('kim')).toBe(2);
  } finally {
    process.stdin.isTTY = isTTY;
  }
  expect(said).toContain('Add --yes');
  expect(readdirSync('.')).toEqual(all);
});

test('one that is open in another window is left, and one that is not there is said', async () => {
  begin('kim');
  const lock = lockHome('kim.home.yaml', { ...realDisk, runs: () => true });
  writeFileSync('.kim.home.yaml.open', `${process.ppid}\n`);
  expect(await forget('kim', '--yes')).toBe(1);
  expect(said).toContain('open in another window');
  expect(existsSync('kim.home.yaml')).toBe(true);
  if (lock.ok) lock.release();
  expect(await forget('lee.home.yaml', '--yes')).toBe(1);
  expect(said).toContain('There is no lee.home.yaml here');
});

test('behind a link both the link and what it leads to go', async () => {
  mkdirSync('elsewhere');
  begin('kim', 'elsewhere');
  writeFileSync('elsewhere/real.yaml', 'lampkeeperHome: 1\n');
  rmSync('kim.home.yaml');
  symlinkSync('elsewhere/real.yaml', 'kim.home.yaml');
  expect(await forget('kim', '--yes')).toBe(0);
  expect(existsSync('elsewhere/real.yaml')).toBe(false);
  expect(readdirSync('.')).toEqual(['elsewhere']);
});

test('what cannot be removed is named', () => {
  begin('kim');
  const stuck = {
    ...realDisk,
    unlink: () => {
      throw Object.assign(new Error('held'), { code: 'EPERM' });
    },
  };
  expect(removeFiles(['kim.home.yaml'], stuck)).toMatchObject({ path: 'kim.home.yaml' });
  expect(existsSync('kim.home.yaml')).toBe(true);
});

test('a home is named once, however its path is written', async () => {
  begin('kim');
  await forget('./kim.home.yaml', '--out', folder, '--dry-run');
  expect(said.match(/kim\.home\.yaml/g)).toHaveLength(1);
  expect(said.match(/kim\.plan\.md/g)).toHaveLength(1);
});

test('nothing but a home is ever removed as one, behind a link neither, and no other home of the name', async () => {
  writeFileSync('diary.txt', 'Dear diary\n');
  writeFileSync('notes.yaml', 'about: "lampkeeperHome: 1"\n');
  symlinkSync('diary.txt', 'lee.home.yaml');
  mkdirSync('ann.home.yaml');
  const all = readdirSync('.');
  for (const one of ['diary.txt', 'notes.yaml', 'lee', 'ann.home.yaml']) {
    said = '';
    expect(await forget(one, '--yes')).toBe(1);
    expect(said).toMatch(/is no home file|this is a folder/);
    expect(said).toContain('Nothing was removed.');
  }
  expect(readdirSync('.')).toEqual(all);
  begin('kim');
  writeFileSync('kim.yaml', 'lampkeeperHome: 1\nanswers: [\n');
  expect(await forget('kim.yaml', '--yes')).toBe(0);
  expect(existsSync('kim.yaml')).toBe(false);
  expect(existsSync('kim.home.yaml')).toBe(true);
});

test('where no lock can be set nothing is removed, and that is said', async () => {
  begin('kim');
  mkdirSync('.kim.home.yaml.open');
  const all = readdirSync('.');
  expect(await forget('kim', '--yes')).toBe(1);
  expect(said).toMatch(/Could not write .*kim\.home\.yaml: .* Nothing was removed\.\n$/);
  expect(readdirSync('.')).toEqual(all);
});
