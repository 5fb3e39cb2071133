import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { Keeping, type ToKeep } from '../../../src/commands/talk/keeping';
import type { Answers } from '../../../src/interview/answers';
import { realDisk } from '../../../src/store/disk';
import { lockOf } from '../../../src/store/sitting-lock';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lampkeeper-keeping-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function sitting(inFolder = folder, disk = realDisk) {
  const toKeep: ToKeep = {
    asOf: '2026-11-25',
    answers: {},
    unfinished: {},
    tariff: null,
    looking: null,
  };
  const fileOf = () => {
    const name = toKeep.answers['home-name'];
    return name === undefined ? null : join(inFolder, `${String(name)}.home.yaml`);
  };
  return { toKeep, keeping: new Keeping(toKeep, interview, fileOf, disk) };
}

const kim: Answers = { 'home-name': 'kim', 'people-count': 4 };

test('nothing is kept before the home has a name, and "kept" is said of what was read back', () => {
  const { keeping } = sitting();
  expect(keeping.save({ 'people-count': 4 }, {})).toBeNull();
  expect(readdirSync(folder)).toEqual([]);
  const path = join(folder, 'kim.home.yaml');
  expect(keeping.settle(kim, {})).toEqual({ file: path, missing: [], why: null });
  keeping.leave();
  expect(readdirSync(folder)).toEqual(['kim.home.yaml']);
});

test('a name changed takes the old file along', () => {
  const { keeping } = sitting();
  keeping.save(kim, {});
  keeping.save({ ...kim, 'home-name': 'oak' }, {});
  keeping.leave();
  expect(readdirSync(folder)).toEqual(['oak.home.yaml']);
});

test('a name taken back whose file cannot be removed is said until it is gone', () => {
  let stuck = true;
  const unlink = (path: string) => {
    if (stuck && path.endsWith('kim.home.yaml')) {
      throw Object.assign(new Error('stuck'), { code: 'EPERM' });
    }
    realDisk.unlink(path);
  };
  const { keeping } = sitting(folder, { ...realDisk, unlink });
  keeping.save(kim, {});
  const oak = { ...kim, 'home-name': 'oak' };
  const says = /^Could not remove .*kim\.home\.yaml: .*the name you took back/;
  expect(keeping.save(oak, {})).toMatch(says);
  expect(keeping.save({ ...oak, 'people-count': 5 }, {})).toMatch(says);
  expect(keeping.settle(oak, {}).missing).toEqual([]);
  expect(keeping.leaveOld()).toMatch(says);
  stuck = false;
  expect(keeping.save(oak, {})).toBeNull();
  keeping.leave();
  expect(readdirSync(folder)).toEqual(['oak.home.yaml']);
});

test('where nothing can be written, what is missing is named, with why and the home to copy', () => {
  const { keeping } = sitting(join(folder, 'none'));
  expect(keeping.save(kim, {})).toMatch(/no such file or folder/);
  const settled = keeping.settle(kim, {});
  expect(settled.missing).toEqual(['Name for the files', 'People at home']);
  expect(settled.why).toMatch(/no such file or folder/);
  expect(keeping.text()).toContain('people-count: 4');
});

test('what failed is tried again, at the end too', () => {
  const { keeping } = sitting();
  const path = join(folder, 'kim.home.yaml');
  keeping.save(kim, {});
  const sound = readFileSync(path, 'utf8');
  writeFileSync(path, 'broken: [');
  expect(keeping.save({ ...kim, 'goal-hours': 48 }, {})).toMatch(/Somebody else/);
  writeFileSync(path, sound);
  expect(keeping.settle({ ...kim, 'goal-hours': 48 }, {}).missing).toEqual([]);
  keeping.leave();
});

test('both answers are said where somebody else answered the same question', () => {
  const { keeping } = sitting();
  const path = join(folder, 'kim.home.yaml');
  keeping.save(kim, {});
  writeFileSync(path, readFileSync(path, 'utf8').replace('count: 4', 'count: 5'));
  expect(keeping.save({ ...kim, 'people-count': 6 }, {})).toMatchObject({
    ask: ['people-count'],
    says: expect.stringMatching(/you said 6.*, the file now says 5.*Which is right\?/),
  });
  keeping.leave();
});

test('a second sitting is told, and may only look', () => {
  const path = join(folder, 'kim.home.yaml');
  const first = sitting();
  first.keeping.save(kim, {});
  // The number of a process that runs for as long as we do, and is not ours.
  writeFileSync(lockOf(path), `${process.ppid}\n`);
  const second = sitting();
  second.keeping.sitDown(path);
  const changed = { ...kim, 'people-count': 9 };
  expect(second.keeping.save(changed, {})).toMatch(/open in another window.*you may only look/);
  expect(second.keeping.settle(changed, {}).missing).toEqual(['People at home']);
  expect(second.keeping.settle({ ...kim, 'now-danger': ['none'] }, {}).missing).toEqual([]);
  second.keeping.leave();
  expect(readFileSync(path, 'utf8')).toContain('people-count: 4');
  expect(existsSync(lockOf(path))).toBe(true);
});
