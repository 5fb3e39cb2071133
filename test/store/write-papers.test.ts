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
import { faultyDisk, type Then } from './faulty-disk';

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

describe('papers with a fault at any step of writing them', () => {
  const two = (text: string): Paper[] => [
    paper(`a: ${text}\n`),
    { ...paper(`# ${text.repeat(30)}\n`), file: 'kim.plan.md' },
  ];
  const FILES = ['kim.plan.md', 'kim.plan.yaml'];

  /** Write anew, over the papers of before or into an empty folder; the kind of step, or null when there are no more. */
  function tryAt(at: number, code: string, then: Then, over: boolean): string | null {
    rmSync(folder, { recursive: true });
    folder = mkdtempSync(join(tmpdir(), 'lampkeeper-'));
    const [old, fresh] = [two('old'), two('fresh')];
    if (over) writePapers(folder, old, false);
    const { disk, steps, arm, disarm } = faultyDisk(at, code, then);
    arm();
    const written = writePapers(folder, fresh, false, disk);
    disarm();
    const step = steps[at - 1] ?? null;
    if (step === null) return null;
    const where = `step ${at} (${step}) ${code}, then ${then}, ${over ? 'over others' : 'first'}`;
    // A paper stands under its name whole, or as it was before.
    const there = readdirSync(folder).filter((file) => FILES.includes(file));
    const is = (papers: Paper[], file: string) =>
      readFileSync(join(folder, file), 'utf8') === signed(papers.find((one) => one.file === file)!);
    for (const file of there) {
      expect(is(fresh, file) || (over && is(old, file)), `${where}: ${file}`).toBe(true);
    }
    if (over) expect(there.sort(), where).toEqual(FILES);
    const news = there.filter((file) => is(fresh, file));
    if (written.ok) expect(news.sort(), where).toEqual(FILES);
    // Up to the last step all are the old ones; from there on what is new is said.
    if (news.length === 1) {
      expect(steps.slice(0, at), where).toContain('rename');
      if (then !== 'dead')
        expect(written, where).toMatchObject({
          says: expect.stringContaining(`new ones: ${join(folder, news[0]!)}`),
        });
    }
    if (then === 'goes on') {
      expect(
        readdirSync(folder).filter((file) => !FILES.includes(file)),
        where,
      ).toEqual([]);
    }
    expect(writePapers(folder, fresh, false).ok, where).toBe(true);
    expect(readdirSync(folder).sort(), where).toEqual(FILES);
    return step;
  }

  test.each<[string, Then, boolean]>([
    ['ENOSPC', 'goes on', false],
    ['ENOSPC', 'goes on', true],
    ['EIO', 'removes nothing', true],
    ['EIO', 'dead', false],
    ['EIO', 'dead', true],
  ])('%s, then %s, over others: %s: no half paper', (code, then, over) => {
    const steps: (string | null)[] = [];
    do steps.push(tryAt(steps.length + 1, code, then, over));
    while (steps.at(-1) !== null);
    expect(steps.filter((step) => step === 'write').length).toBeGreaterThan(2);
    expect(steps.filter((step) => step === 'rename')).toHaveLength(2);
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
