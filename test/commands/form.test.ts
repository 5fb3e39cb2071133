import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import interview from '#compiled/questions.js';

const program = fileURLToPath(new URL('../../src/bin/lampkeeper.mjs', import.meta.url));
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'lampkeeper-form-'));
  writeFileSync(
    join(folder, 'oak.home.yaml'),
    'lampkeeperHome: 1\nanswers:\n  home-name: oak\n  home-kind: house\n  water-source: well\n  well-hp: not sure\n  main-amps: not sure\n  goal-hours: not sure\n',
  );
});
afterAll(() => rmSync(folder, { recursive: true }));

const form = (...args: string[]) =>
  spawnSync(process.execPath, [program, 'form', ...args], { cwd: folder, encoding: 'utf8' });

test('the form of a home holds what is on its list, by place, with room to write', () => {
  const { status, stdout } = form('oak');
  expect(status).toBe(0);
  expect(stdout).toMatch(
    /# To look at: oak[\s\S]*## At the electric panel[\s\S]*main breaker[\s\S]*____ amps[\s\S]*## At the pumps and the water[\s\S]*____ horsepower/,
  );
  expect(stdout).not.toContain('before you would leave');
  // A well pump is there, a blank each for what it runs and starts at; nobody told of a heat pump.
  expect(stdout).toMatch(/\| Well pump \| _+ \| _+ \| {2}\|/);
  expect(stdout).not.toContain('| Heat pump |');
});

test('the form alone is the whole bank, each question once, the walk behind the talk', () => {
  const { status, stdout } = form();
  expect(status).toBe(0);
  const asked = interview.questions
    .filter(({ id, topic }) => id !== 'now-danger' && topic !== 'measured')
    .map(({ ask }) => ask);
  for (const ask of new Set(asked)) expect(stdout).toContain(`**${ask}**`);
  const heads = [...stdout.matchAll(/^## (.*)$/gm)].map(([, head]) => head);
  expect(heads.slice(-7)).toEqual([
    'At the electric panel',
    'At the heating and cooling',
    'At the pumps and the water',
    'In the rooms',
    'Outdoors and in the garage',
    'In your papers',
    'If you have a meter',
  ]);
  const things = interview.questions.find(({ id }) => id === 'measured')!.choices!;
  for (const { label, alone } of things) {
    if (alone !== true) expect(stdout).toContain(`| ${label} | ____`);
  }
  expect(stdout).toContain('call 911');
});

test('a home that is not there is said, and nothing is printed', () => {
  expect(form('nobody.home.yaml')).toMatchObject({ status: 1, stdout: '' });
  expect(form('a', 'b').status).toBe(2);
});
