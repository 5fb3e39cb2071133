import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { realDisk } from '../../src/store/disk';
import { cleanBeside, folderProblem, lockHome, lockOf } from '../../src/store/sitting-lock';

let folder: string;
let path: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lampkeeper-lock-'));
  path = join(folder, 'kim.home.yaml');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** A number that no process has here. */
const gone = 4_190_000;

test('one sits down at a home, and leaves nothing when getting up', () => {
  const lock = lockHome(path);
  expect(readdirSync(folder)).toHaveLength(1);
  if (lock.ok) lock.release();
  expect(readdirSync(folder)).toEqual([]);
});

test('a second one is told who sits there, and where that is written', () => {
  writeFileSync(lockOf(path), '77\n');
  const disk = { ...realDisk, runs: (pid: number) => pid === 77 };
  expect(lockHome(path, disk)).toEqual({ ok: false, pid: 77, file: lockOf(path) });
});

test('on a full disk there is none, and nothing is left', () => {
  const write = () => {
    throw Object.assign(new Error('full'), { code: 'ENOSPC' });
  };
  expect(() => lockHome(path, { ...realDisk, write })).toThrow('full');
  expect(readdirSync(folder)).toEqual([]);
});

test.each(['', 'x', `${gone}\n`])('a lock left behind ("%s") is taken away', (left) => {
  writeFileSync(lockOf(path), left);
  expect(lockHome(path).ok).toBe(true);
});

test('files begun by killed programs are cleaned, others are left', () => {
  for (const name of [`new-${gone}`, 'new-1', 'new-x', 'bak']) writeFileSync(`${path}.${name}`, '');
  const disk = { ...realDisk, runs: (pid: number) => pid === 1 };
  cleanBeside(path, disk);
  expect(readdirSync(folder).sort()).toEqual(
    ['bak', 'new-1', 'new-x'].map((name) => `kim.home.yaml.${name}`),
  );
});

test('a folder is tried by writing into it', () => {
  expect(folderProblem(folder)).toBeNull();
  expect(readdirSync(folder)).toEqual([]);
  expect(folderProblem(join(folder, 'none'))).toMatchObject({ code: 'ENOENT' });
  const full = {
    ...realDisk,
    write: () => {
      throw Object.assign(new Error('full'), { code: 'ENOSPC' });
    },
  };
  expect(folderProblem(folder, full)).toMatchObject({ code: 'ENOSPC' });
  expect(readdirSync(folder)).toEqual([]);
});
