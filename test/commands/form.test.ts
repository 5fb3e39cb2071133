import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { runHere } from './run-here';
import { runProgram } from './run-program';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'lampkeeper-form-'));
  writeFileSync(
    join(folder, 'oak.home.yaml'),
    'lampkeeperHome: 1\nanswers:\n  home-name: oak\n  home-kind: house\n  water-source: well\n  well-hp: not sure\n  main-amps: not sure\n  goal-hours: not sure\n',
  );
});
afterAll(() => rmSync(folder, { recursive: true }));

const form = (...args: string[]) => runHere(folder, ['form', ...args]);

test('the form of a home holds what is on its list, by place, with room to write', async () => {
  const { code, out } = await form('oak');
  expect(code).toBe(0);
  expect(out).toMatch(
    /# To look at: oak[\s\S]*## At the electric panel[\s\S]*main breaker[\s\S]*____ amps[\s\S]*## At the pumps and the water[\s\S]*____ horsepower/,
  );
  expect(out).not.toContain('before you would leave');
  // A well pump is there, a blank each for what it runs and starts at; nobody told of a heat pump.
  expect(out).toMatch(/\| Well pump \| _+ \| _+ \| {2}\|/);
  expect(out).not.toContain('| Heat pump |');
});

test('the form alone is the whole bank, each question once, the walk behind the talk', async () => {
  const { code, out } = await form();
  expect(code).toBe(0);
  const asked = interview.questions
    .filter(({ id, topic }) => id !== 'now-danger' && topic !== 'measured')
    .map(({ ask }) => ask);
  for (const ask of new Set(asked)) expect(out).toContain(`**${ask}**`);
  const heads = [...out.matchAll(/^## (.*)$/gm)].map(([, head]) => head);
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
    if (alone !== true) expect(out).toContain(`| ${label} | ____`);
  }
  expect(out).toContain('call 911');
});

test('a home that is not there is said, and nothing is printed', async () => {
  expect(await form('nobody.home.yaml')).toMatchObject({ code: 1, out: '' });
  expect(runProgram(folder, ['form', 'a', 'b']).code).toBe(2);
});
