import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { saySystemError } from '../../src/store/say-system-error';
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

  test('are for their owner only, folder and file', () => {
    const inner = join(folder, 'new', 'papers');
    writePapers(inner, [paper('a: 1\n')], false);
    expect(statSync(inner).mode & 0o777).toBe(0o700);
    expect(statSync(join(inner, 'kim.plan.yaml')).mode & 0o777).toBe(0o600);
  });

  test('hold nothing that a terminal obeys, and are known again as ours', () => {
    const bad = paper('name: \u001b[31mred\u202e\u0007\n');
    expect(writePapers(folder, [bad], false).ok).toBe(true);
    expect(readFileSync(join(folder, 'kim.plan.yaml'), 'utf8')).toMatch(
      /^name: <U\+001B>\[31mred<U\+202E><U\+0007>\n/,
    );
    expect(writePapers(folder, [bad], false).ok).toBe(true);
  });

  test.skipIf(!existsSync('/proc/self'))('end with a sentence where no folder can be made', () => {
    expect(writePapers('/proc/x', [paper('a: 1\n')], false).ok).toBe(false);
  });

  test('say plainly when the folder is a file', () => {
    writeFileSync(join(folder, 'taken'), '');
    const written = writePapers(join(folder, 'taken'), [paper('a: 1\n')], false);
    expect(written).toMatchObject({ ok: false, says: expect.stringMatching(/Could not write/) });
  });
});

describe('an error of the system', () => {
  test.each([
    ['EACCES', /may not be written/],
    ['EROFS', /can only be read/],
    ['ENOSPC', /disk is full\. Free some space/],
    ['EDQUOT', /share of the disk/],
    ['EISDIR', /a folder, not a file/],
  ])('names the remedy for %s', (code, remedy) => {
    expect(saySystemError(Object.assign(new Error('x'), { code }), 'write', 'kim')).toMatch(remedy);
  });
});
