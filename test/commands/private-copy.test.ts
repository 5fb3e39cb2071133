import {
  copyFileSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import interview from '#compiled/questions.js';
import { checkCommand } from '../../src/commands/check-command';
import { COMMANDS } from '../../src/commands/command-table';
import { type Arguments, readArguments } from '../../src/commands/read-arguments';
import { checkTyped } from '../../src/interview/check-answer';
import { parseHome } from '../../src/store/read-home';

const household = fileURLToPath(new URL('../households/mill-lane.home.yaml', import.meta.url));

let folder: string;
let said: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lampkeeper-private-'));
  said = '';
  const take = (text: string | Uint8Array) => {
    said += String(text);
    return true;
  };
  vi.spyOn(process.stdout, 'write').mockImplementation(take);
  vi.spyOn(process.stderr, 'write').mockImplementation(take);
});
afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

const args = (...words: string[]) => readArguments(words) as Arguments;

test('check says what private things a home file holds', async () => {
  expect(await checkCommand(args('check', household))).toBe(0);
  expect(said).toMatch(/Private, where the home is: ZIP code/);
  expect(said).toMatch(/Private, who lives there and their health: /);
  expect(said).toMatch(/Private, bills and money: /);
});

test('a copy to share holds none of them, and no note or begun text either', async () => {
  const path = join(folder, 'kim.home.yaml');
  copyFileSync(household, path);
  writeFileSync(
    path,
    `# call Ann at night\nnotes: the key is under the mat\n${readFileSync(path)}`,
  );
  expect(await checkCommand(args('check', path, '--private'))).toBe(0);
  const copy = join(folder, 'kim-to-share.home.yaml');
  const text = readFileSync(copy, 'utf8');
  expect(text).not.toMatch(/Ann at night|under the mat/);
  expect(statSync(copy).mode & 0o777).toBe(0o600);
  const read = parseHome(text, interview);
  if (!read.ok) throw new Error('the copy is not sound');
  const gone = new Set(Object.values(interview.private).flat());
  expect(Object.keys(read.answers).filter((id) => gone.has(id))).toEqual([]);
  expect(read.answers['water-source']).toBeDefined();

  // What is there is never replaced.
  writeFileSync(copy, 'mine');
  expect(await checkCommand(args('check', path, '--private'))).toBe(1);
  expect(readFileSync(copy, 'utf8')).toBe('mine');
  expect(readdirSync(folder)).toHaveLength(2);
});

test('health, place and money are all private', () => {
  const all = Object.values(interview.private).flat();
  for (const id of ['medical-devices', 'people-risk', 'home-zip', 'budget-now', 'bill-dollars']) {
    expect(all).toContain(id);
  }
});

test('names that a computer or the command line keeps for itself are no names of homes', () => {
  const question = interview.questions.find((one) => one.id === 'home-name')!;
  for (const name of ['con', 'AUX', 'nul', 'com1', 'lpt9']) {
    expect(checkTyped(question, name)).toMatchObject({ ok: false });
  }
  expect(checkTyped(question, 'console').ok).toBe(true);
  expect(COMMANDS).toContain('plan');
});
