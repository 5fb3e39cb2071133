import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { lightsOnly } from '../fixtures/quick-homes';
import { runHere } from './run-here';
import { runProgram } from './run-program';

const household = fileURLToPath(new URL('../households/mill-lane.home.yaml', import.meta.url));
const text = readFileSync(household, 'utf8');

const thin = lightsOnly('thin');

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lampkeeper-input-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const run = (args: string[], input: string) => runProgram(folder, args, input);

test('a home is checked and planned from standard input, its name the one that was told', () => {
  const checked = run(['check', '-', '--json'], text);
  expect(JSON.parse(checked.out)).toMatchObject({ kind: 'home', ok: true, faults: [] });
  const planned = run(['plan', '-', '--out', 'papers', '--dry-run'], thin);
  expect(planned.err).toContain('Would write papers/thin.plan.md');
  expect(planned.code).toBe(0);
  expect(readdirSync(folder)).toEqual([]);
});

test('a fault in it has its line, as words and as data', () => {
  const broken = `${text}  goal-hour: 24\n`;
  const line = text.split('\n').length;
  expect(run(['check', '-'], broken).out).toMatch(
    new RegExp(`^standard input:${line}:3: no question is called "goal-hour"`),
  );
  const { out, code } = run(['check', '-', '--json'], broken);
  expect(JSON.parse(out)).toMatchObject({ ok: false, faults: [{ line, column: 3 }] });
  expect(code).toBe(1);
});

test('what would have to be written beside it is refused', async () => {
  expect((await runHere(folder, ['plan', '-', '--tariff', 'x.yaml'])).code).toBe(2);
  expect((await runHere(folder, ['check', '-', '--private'])).code).toBe(2);
});

test('a dry run writes nothing, and ends as the run would', async () => {
  writeFileSync(join(folder, 'kim.home.yaml'), thin);
  writeFileSync(join(folder, 'kim.plan.md'), 'mine');
  const would = await runHere(folder, ['plan', 'kim', '--out', '.', '--dry-run']);
  expect(would.err).toContain('kim.plan.md is there already and was changed');
  expect(would.code).toBe(1);
  expect((await runHere(folder, ['check', 'kim', '--private', '--dry-run'])).err).toContain(
    'Would write kim-to-share.home.yaml, without 2 private answers.',
  );
  expect((await runHere(folder, ['plan', 'kim', '--dry-run'])).code).toBe(2);
  expect(readdirSync(folder).sort()).toEqual(['kim.home.yaml', 'kim.plan.md']);
});

test('an interview whose input ends before the first answer has failed; one that was told to stop has not', () => {
  const ended = run([], '');
  expect(ended.code).toBe(1);
  expect(ended.err).toContain('Standard input ended before the first answer.');
  expect(run([], 'stop\n').code).toBe(0);
  expect(run([], '9\noak\n').code).toBe(0);
  expect(readdirSync(folder)).toEqual(['oak.home.yaml']);
});
