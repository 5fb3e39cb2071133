import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { saySystemError } from '../../src/store/say-system-error';
import { saveHome } from '../../src/store/write-home';
import { type Paper, signed, writePapers } from '../../src/store/write-papers';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lampkeeper-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

const paper = (text: string): Paper => ({
  file: 'kim.plan.yaml',
  text,
  comment: (line) => `# ${line}`,
});

describe('papers', () => {
  test('are written, and written again over our own unchanged file', () => {
    expect(writePapers(folder, [paper('a: 1\n')], false).ok).toBe(true);
    expect(writePapers(folder, [paper('a: 2\n')], false).ok).toBe(true);
    expect(readFileSync(join(folder, 'kim.plan.yaml'), 'utf8')).toBe(signed(paper('a: 2\n')));
  });

  test('leave a file that somebody changed, and write nothing at all', () => {
    writePapers(folder, [paper('a: 1\n')], false);
    const path = join(folder, 'kim.plan.yaml');
    writeFileSync(path, readFileSync(path, 'utf8').replace('a: 1', 'a: mine'));
    const other: Paper = { ...paper('b: 1\n'), file: 'kim.plan.md' };
    const written = writePapers(folder, [other, paper('a: 2\n')], false);
    expect(written).toMatchObject({ ok: false, says: expect.stringContaining('--force') });
    expect(readFileSync(path, 'utf8')).toContain('a: mine');
    expect(readdirSync(folder)).toEqual(['kim.plan.yaml']);
  });

  test('leave a file that is not ours, until forced', () => {
    writeFileSync(join(folder, 'kim.plan.yaml'), 'something else\n');
    expect(writePapers(folder, [paper('a: 1\n')], false).ok).toBe(false);
    expect(writePapers(folder, [paper('a: 1\n')], true).ok).toBe(true);
  });

  test('say plainly when the folder is a file', () => {
    writeFileSync(join(folder, 'taken'), '');
    const written = writePapers(join(folder, 'taken'), [paper('a: 1\n')], false);
    expect(written).toMatchObject({ ok: false, says: expect.stringMatching(/Could not write/) });
  });
});

describe('the home file', () => {
  test('is readable by its owner only, and leaves nothing beside it', () => {
    const path = join(folder, 'kim.home.yaml');
    expect(
      saveHome(path, interview, { answers: { 'goal-hours': 24 }, asOf: '2026-11-25' }),
    ).toBeNull();
    expect(statSync(path).mode & 0o777).toBe(0o600);
    expect(readdirSync(folder)).toEqual(['kim.home.yaml']);
  });

  test('that cannot be written is said plainly, and the old one stays whole', () => {
    const path = join(folder, 'kim.home.yaml');
    saveHome(path, interview, { answers: { 'goal-hours': 24 }, asOf: '2026-11-25' });
    const before = readFileSync(path, 'utf8');
    const says = saveHome(join(folder, 'nowhere', 'kim.home.yaml'), interview, {
      answers: {},
      asOf: '2026-11-25',
    });
    expect(says).toMatch(/Could not write .*no such file or folder/);
    expect(readFileSync(path, 'utf8')).toBe(before);
  });

  test('on a full disk is said plainly, and the old one stays whole', () => {
    const path = join(folder, 'kim.home.yaml');
    saveHome(path, interview, { answers: { 'goal-hours': 24 }, asOf: '2026-11-25' });
    const before = readFileSync(path, 'utf8');
    // Linux has a device that is always full; elsewhere a folder in the way fails just as surely.
    const full = existsSync('/dev/full');
    symlinkSync(full ? '/dev/full' : folder, `${path}.new-${process.pid}`);
    const says = saveHome(path, interview, { answers: { 'goal-hours': 48 }, asOf: '2026-11-25' });
    expect(says).toMatch(full ? /the disk is full/ : /Could not write/);
    expect(readFileSync(path, 'utf8')).toBe(before);
  });

  test.each([
    ['EACCES', /may not be written/],
    ['EROFS', /can only be read/],
    ['ENOSPC', /disk is full.*nothing you typed is lost/],
    ['EDQUOT', /share of the disk/],
    ['EISDIR', /a folder, not a file/],
  ])('names the remedy for %s', (code, remedy) => {
    expect(saySystemError(Object.assign(new Error('x'), { code }), 'write', 'kim')).toMatch(remedy);
  });
});
