import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, expect, test } from 'vitest';

const program = fileURLToPath(new URL('../../src/bin/lampkeeper.mjs', import.meta.url));
const household = fileURLToPath(new URL('../households/mill-lane.home.yaml', import.meta.url));
const text = readFileSync(household, 'utf8');

/** Invented: told so little that its plan takes a third of the time. */
const thin = 'lampkeeperHome: 1\nanswers:\n  home-name: thin\n  people-count: 2\n';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lampkeeper-input-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const run = (args: string[], input: string) =>
  spawnSync(process.execPath, [program, ...args], { cwd: folder, input, encoding: 'utf8' });

test('a home is checked and planned from standard input, its name the one that was told', () => {
  const checked = run(['check', '-', '--json'], text);
  expect(JSON.parse(checked.stdout)).toMatchObject({ kind: 'home', ok: true, faults: [] });
  const planned = run(['plan', '-', '--out', 'papers', '--dry-run'], thin);
  expect(planned.stderr).toContain('Would write papers/thin.plan.md');
  expect(planned.status).toBe(0);
  expect(readdirSync(folder)).toEqual([]);
});

test('a fault in it has its line, as words and as data', () => {
  const broken = `${text}  goal-hour: 24\n`;
  const line = text.split('\n').length;
  expect(run(['check', '-'], broken).stdout).toMatch(
    new RegExp(`^standard input:${line}:3: no question is called "goal-hour"`),
  );
  const { stdout, status } = run(['check', '-', '--json'], broken);
  expect(JSON.parse(stdout)).toMatchObject({ ok: false, faults: [{ line, column: 3 }] });
  expect(status).toBe(1);
});

test('what would have to be written beside it is refused', () => {
  expect(run(['plan', '-', '--tariff', 'x.yaml'], text).status).toBe(2);
  expect(run(['check', '-', '--private'], text).status).toBe(2);
});

test('a dry run writes nothing, and ends as the run would', () => {
  writeFileSync(join(folder, 'kim.home.yaml'), thin);
  writeFileSync(join(folder, 'kim.plan.md'), 'mine');
  const would = run(['plan', 'kim', '--out', '.', '--dry-run'], '');
  expect(would.stderr).toContain('kim.plan.md is there already and was changed');
  expect(would.status).toBe(1);
  expect(run(['check', 'kim', '--private', '--dry-run'], '').stderr).toContain(
    'Would write kim-to-share.home.yaml, without 2 private answers.',
  );
  expect(run(['plan', 'kim', '--dry-run'], '').status).toBe(2);
  expect(readdirSync(folder).sort()).toEqual(['kim.home.yaml', 'kim.plan.md']);
});

test('an interview whose input ends before the first answer has failed; one that was told to stop has not', () => {
  const ended = run([], '');
  expect(ended.status).toBe(1);
  expect(ended.stderr).toContain('Standard input ended before the first answer.');
  expect(run([], 'stop\n').status).toBe(0);
  expect(run([], '9\noak\n').status).toBe(0);
  expect(readdirSync(folder)).toEqual(['oak.home.yaml']);
});
