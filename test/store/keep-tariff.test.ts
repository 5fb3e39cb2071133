import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { demoTariffs } from '../../src/bill/tariff/demo-tariffs';
import { readTariff } from '../../src/bill/tariff/read-tariff';
import { keepTariff, withTariff } from '../../src/store/keep-tariff';
import { parseHome } from '../../src/store/read-home';
import { homeText } from '../../src/store/write-home';
import { tariffInWords } from '../../src/words/en/tariff/tariff-in-words';

/** As somebody would have written them. */
const written = demoTariffs.rows.map(tariffInWords);

const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-tariff-'));
afterAll(() => rmSync(folder, { recursive: true }));

const home = `# my own note
lampkeeperHome: 1
asOf: "2026-11-25" # the day we began
answers:
  goal-hours: 24 h # a day
`;

test.each(written.map((tariff) => [tariff.name, tariff] as const))(
  '%s is kept in a home file and read back the same, notes and answers untouched',
  (_, tariff) => {
    const text = withTariff(home, tariff);
    const read = parseHome(text, interview);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    expect(readTariff(read.ownTariff!.data).tariff).toEqual(tariff);
    expect(read.answers).toEqual({ 'goal-hours': 24 });
    for (const line of home.trimEnd().split('\n')) expect(text.split('\n')).toContain(line);
    expect(withTariff(text, tariff)).toBe(text);
  },
);

test('a second tariff takes the place of the first', () => {
  const [one, other] = written;
  expect(withTariff(withTariff(home, one!), other!)).toBe(withTariff(home, other!));
});

test('the interview writes the tariff of a home back with its answers', () => {
  const tariff = written[2]!;
  const read = parseHome(
    homeText(interview, { answers: { 'goal-hours': 24 }, asOf: '2026-11-25', tariff }),
    interview,
  );
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  expect(readTariff(read.ownTariff!.data).tariff).toEqual(tariff);
});

test('a file that cannot be written is said, and stays as it is', () => {
  const path = join(folder, 'kim.home.yaml');
  writeFileSync(path, home);
  expect(keepTariff(path, written[0]!)).toBeNull();
  expect(readFileSync(path, 'utf8')).toContain('tariff:');
  expect(keepTariff(join(folder, 'nobody.home.yaml'), {})).toContain('Check the name');
});

test('a tariff that is no map, or one with aliases, is a fault with its line', () => {
  for (const block of ['tariff: flat', 'tariff: &a { name: *a }']) {
    const read = parseHome(`lampkeeperHome: 1\n${block}\nanswers:\n`, interview);
    expect(read.ok, block).toBe(false);
  }
});
