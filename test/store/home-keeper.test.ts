import {
  lstatSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Answers } from '../../src/interview/answers';
import { realDisk } from '../../src/store/disk';
import { HomeKeeper } from '../../src/store/home-keeper';
import { parseHome } from '../../src/store/read-home';
import { temporaryOf } from '../../src/store/write-file-whole';
import { faultyDisk, type Step, type Then } from './faulty-disk';

let folder: string;
let path: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lampkeeper-keep-'));
  path = join(folder, 'kim.home.yaml');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const asOf = '2026-11-25';
const home = (answers: Answers) => ({ answers, asOf });
const begun: Answers = { 'home-name': 'kim', 'people-count': 4, 'goal-hours': 24 };
const text = () => readFileSync(path, 'utf8');
const onDisk = () => {
  const read = parseHome(text(), interview);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.answers;
};

function keep(keeper: HomeKeeper, answers: Answers) {
  const kept = keeper.keep(home(answers));
  if (!kept.ok) throw new Error(kept.says);
  return kept.outside;
}

describe('a home file kept through a sitting', () => {
  test('is readable by its owner only, and leaves nothing beside it', () => {
    keep(new HomeKeeper(path, interview), begun);
    expect(statSync(path).mode & 0o777).toBe(0o600);
    expect(readdirSync(folder)).toEqual(['kim.home.yaml']);
    expect(onDisk()).toEqual(begun);
  });

  test('keeps comments, order, and keys that are not ours', () => {
    const mine = `# about my home
lampkeeperHome: 1
asOf: "2026-11-25" # the day we began
notes:
  - ask the neighbor # about the cord
answers:
  # first the goal
  goal-hours: 24 h # a day
  people-count: 4 # with grandma
# the end
`;
    writeFileSync(path, mine);
    keep(new HomeKeeper(path, interview), {
      'goal-hours': 48,
      'people-count': 4,
      'home-zip': '48911',
    });
    const lines = text().split('\n');
    for (const line of mine
      .trimEnd()
      .split('\n')
      .filter((l) => !l.includes('goal-hours'))) {
      expect(lines).toContain(line);
    }
    expect(text()).toContain('  goal-hours: 48 h # a day');
    expect(onDisk()).toMatchObject({ 'goal-hours': 48, 'home-zip': '48911' });
    expect(lines.indexOf('  # first the goal')).toBe(
      lines.indexOf('  goal-hours: 48 h # a day') - 1,
    );
  });

  test('takes our own line along when an answer goes, and leaves the others where they belong', () => {
    const keeper = new HomeKeeper(path, interview);
    keep(keeper, begun);
    const { 'home-name': _, ...rest } = begun;
    keep(keeper, rest);
    keep(keeper, begun);
    expect(text().match(/short name/g)).toHaveLength(1);
    expect(text().match(/How many people/g)).toHaveLength(1);
    expect(text()).toMatch(/short name[^\n]*\n {2}home-name: kim\n/);
    expect(text()).toMatch(/How many people[^\n]*\n {2}people-count: 4\n/);
  });

  test('takes in what somebody else changed, where we changed something else', () => {
    const keeper = new HomeKeeper(path, interview);
    keep(keeper, begun);
    writeFileSync(path, text().replace('people-count: 4', 'people-count: 5 # my own'));
    const outside = keep(keeper, { ...begun, 'goal-hours': 48 });
    const both = { ...begun, 'people-count': 5, 'goal-hours': 48 };
    expect(outside).toEqual({ answers: both, both: [] });
    expect(onDisk()).toEqual(both);
    expect(text()).toContain('# my own');
    expect(keep(keeper, both)).toBeNull();
  });

  test('asks where both changed the same, and the file says theirs until it is answered', () => {
    const keeper = new HomeKeeper(path, interview);
    keep(keeper, begun);
    writeFileSync(path, text().replace('people-count: 4', 'people-count: 5'));
    const outside = keep(keeper, { ...begun, 'people-count': 6 });
    expect(outside!.both).toEqual([{ id: 'people-count', theirs: 5 }]);
    expect(outside!.answers['people-count']).toBeUndefined();
    expect(onDisk()['people-count']).toBe(5);
    // Nothing is answered yet: the file stays.
    keep(keeper, { ...outside!.answers, 'goal-hours': 48 });
    expect(onDisk()).toEqual({ ...begun, 'people-count': 5, 'goal-hours': 48 });
    keep(keeper, { ...begun, 'goal-hours': 48, 'people-count': 6 });
    expect(onDisk()['people-count']).toBe(6);
  });

  test('that somebody broke is not written over, and is once it is mended', () => {
    const keeper = new HomeKeeper(path, interview);
    keep(keeper, begun);
    const sound = text();
    writeFileSync(path, 'answers: [half');
    const answers = { ...begun, 'goal-hours': 48 };
    expect(keeper.keep(home(answers))).toMatchObject({
      ok: false,
      says: expect.stringMatching(/Somebody else changed.*kim\.home\.yaml:\d+:\d+/),
    });
    expect(text()).toBe('answers: [half');
    expect(keeper.missing(home(answers))).toEqual(Object.keys(answers));
    writeFileSync(path, sound);
    keep(keeper, answers);
    expect(onDisk()).toEqual(answers);
  });

  test('that was taken away is written again whole', () => {
    const keeper = new HomeKeeper(path, interview);
    keep(keeper, begun);
    unlinkSync(path);
    keep(keeper, { ...begun, 'goal-hours': 48 });
    expect(onDisk()).toEqual({ ...begun, 'goal-hours': 48 });
  });

  test('behind a link is replaced whole, and the link stays; a link to nowhere is refused', () => {
    const real = join(folder, 'real.yaml');
    keep(new HomeKeeper(real, interview), begun);
    symlinkSync(real, path);
    keep(new HomeKeeper(path, interview), { ...begun, 'goal-hours': 48 });
    expect(lstatSync(path).isSymbolicLink()).toBe(true);
    expect(lstatSync(real).isFile()).toBe(true);
    expect(readFileSync(real, 'utf8')).toContain('48 h');
    unlinkSync(real);
    expect(new HomeKeeper(path, interview).keep(home(begun))).toMatchObject({
      ok: false,
      says: expect.stringContaining('a link'),
    });
  });

  test('is never written through a link laid beside it', () => {
    const other = join(folder, 'other');
    writeFileSync(other, 'precious');
    symlinkSync(other, `${path}.new-${process.pid}`);
    keep(new HomeKeeper(path, interview), begun);
    expect(readFileSync(other, 'utf8')).toBe('precious');
    expect(onDisk()).toEqual(begun);
  });
});

describe('with a fault at any step of saving', () => {
  const next: Answers = { ...begun, 'goal-hours': 48, 'home-zip': '48911' };

  /** Save `next` over `begun` with a fault at one step; false when there are no more steps. */
  function tryAt(at: number, code: string, then: Then, leftover = false): boolean {
    rmSync(folder, { recursive: true });
    folder = mkdtempSync(join(tmpdir(), 'lampkeeper-keep-'));
    path = join(folder, 'kim.home.yaml');
    keep(new HomeKeeper(path, interview), begun);
    if (leftover) writeFileSync(temporaryOf(path), 'half');
    const before = text();
    const { disk, steps, arm, disarm } = faultyDisk(at, code, then);
    const keeper = new HomeKeeper(path, interview, disk);
    arm();
    const kept = keeper.keep(home(next));
    if (steps.length < at) return false;
    tried.push(...steps);
    const where = `step ${at} (${steps[at - 1]}) ${code}, then ${then}`;
    // The old or the new, whole; and never "kept" where it is not.
    const now = onDisk();
    expect([begun, next], where).toContainEqual(now);
    if (text() !== before) expect(now, where).toEqual(next);
    if (kept.ok) expect(now, where).toEqual(next);
    if (then !== 'dead') {
      disarm();
      keep(keeper, next);
      expect(onDisk(), where).toEqual(next);
      expect(keeper.missing(home(next)), where).toEqual([]);
      if (then === 'goes on') expect(readdirSync(folder), where).toEqual(['kim.home.yaml']);
    }
    return true;
  }

  /** Steps that came up since it was emptied. */
  let tried: Step[] = [];
  beforeEach(() => {
    tried = [];
  });

  test.each(['ENOSPC', 'EIO', 'EACCES', 'EDQUOT'])('%s: nothing lost, nothing mixed', (code) => {
    let at = 1;
    while (tryAt(at, code, 'goes on')) at += 1;
    expect(at).toBeGreaterThan(15);
  });

  test('killed between any two steps: the old file or the new one', () => {
    let at = 1;
    while (tryAt(at, 'EIO', 'dead')) at += 1;
    expect(at).toBeGreaterThan(10);
  });

  test.each(['EIO'])('%s, and what was begun cannot be taken away either', (code) => {
    let at = 1;
    while (tryAt(at, code, 'removes nothing')) at += 1;
    expect(at).toBeGreaterThan(15);
    expect(tried).toContain('unlink');
  });

  test('with a file left there by a killed program that has our number, also where it cannot be removed', () => {
    for (const then of ['goes on', 'removes nothing', 'dead'] as const) {
      let at = 1;
      while (tryAt(at, 'EIO', then, true)) at += 1;
      expect(at).toBeGreaterThan(15);
    }
    expect(tried).toContain('unlink');
  });

  test('a file that cannot be removed is said, and stays whole', () => {
    const { disk, arm, disarm } = faultyDisk(1, 'EPERM', 'removes nothing');
    const keeper = new HomeKeeper(path, interview, {
      ...realDisk,
      unlink: disk.unlink,
    });
    keep(keeper, begun);
    arm();
    expect(keeper.remove()).toMatch(/^Could not remove .*kim\.home\.yaml: /);
    expect(onDisk()).toEqual(begun);
    disarm();
    expect(keeper.remove()).toBeNull();
    expect(readdirSync(folder)).toEqual([]);
  });

  test('every kind of step was tried', () => {
    const { disk, steps, arm } = faultyDisk(0, '');
    arm();
    keep(new HomeKeeper(path, interview, disk), begun);
    expect(new Set(steps)).toEqual(new Set(['open', 'read', 'write', 'fsync', 'close', 'rename']));
    // The folder after the file: the new name too outlasts a power cut.
    expect(steps.lastIndexOf('fsync')).toBeGreaterThan(steps.indexOf('rename'));
  });

  test('on Windows a file held for a moment is tried again', () => {
    let held = 3;
    const waits: number[] = [];
    const disk = {
      ...realDisk,
      platform: 'win32' as const,
      wait: (ms: number) => void waits.push(ms),
      rename: (from: string, to: string) => {
        held -= 1;
        if (held >= 0) throw Object.assign(new Error('held'), { code: 'EPERM' });
        realDisk.rename(from, to);
      },
    };
    keep(new HomeKeeper(path, interview, disk), begun);
    expect(onDisk()).toEqual(begun);
    expect(waits).toHaveLength(3);
  });
});
