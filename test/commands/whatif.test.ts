import { copyFileSync, mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { readArguments } from '../../src/commands/read-arguments';
import { whatifCommand } from '../../src/commands/whatif-command';
import { folder } from '../households/read-household';

const place = mkdtempSync(join(tmpdir(), 'lampkeeper-whatif-'));
const home = join(place, 'oak.home.yaml');
copyFileSync(join(folder, 'mill-lane.home.yaml'), home);

afterEach(() => {
  vi.restoreAllMocks();
});

/** What the command prints and how it ends; no program is started for it. */
async function whatif(...argv: string[]) {
  const said = { out: '', err: '' };
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    said.out += String(text);
    return true;
  });
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    said.err += String(text);
    return true;
  });
  const args = readArguments(['whatif', ...argv]);
  if ('wrong' in args) throw new Error(args.wrong);
  const code = await whatifCommand(args);
  vi.restoreAllMocks();
  return { code, ...said };
}

test('lays both plans side by side in 80 columns, and writes nothing', async () => {
  const before = readFileSync(home, 'utf8');
  const { code, out } = await whatif(home, 'goal=72', 'season=both');
  expect(code).toBe(0);
  expect(out).toContain('What if. Time to manage at home: 3 days (now: 24 h).');
  expect(out).toMatch(/^ +Now +What if$/m);
  expect(out).toContain('want 24 h.');
  expect(out).toContain('want 3 days.');
  expect(out).toContain('Nothing was written.');
  for (const line of out.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
  expect(readFileSync(home, 'utf8')).toBe(before);
  expect(readdirSync(place)).toEqual(['oak.home.yaml']);
});

test('with --plain each sentence says whether it is now or what if', async () => {
  const { out } = await whatif(home, 'generator-place=none', '--plain');
  expect(out).not.toMatch(/ {4}/);
  expect(out).toMatch(/^What to get:$/m);
  expect(out).toMatch(/^ {2}Now: Portable generator/m);
  expect(out).toMatch(/^ {2}What if: /m);
  expect(out).toMatch(/^Cautions that go:$/m);
});

test('is called the wrong way without a home, without a pair, or with a pair that cannot be read', async () => {
  expect(await whatif()).toMatchObject({ code: 2, out: '' });
  expect(await whatif(home)).toMatchObject({ code: 2, out: '' });
  const { code, out, err } = await whatif(home, 'sizze=larger');
  expect([code, out]).toEqual([2, '']);
  expect(err).toContain('Did you mean "size"?');
  expect(await whatif(join(place, 'nobody.home.yaml'), 'goal=1')).toMatchObject({
    code: 1,
    out: '',
  });
});
