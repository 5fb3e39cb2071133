import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { parse } from 'yaml';
import { furnaceOnly } from '../fixtures/quick-homes';
import { runHere } from './run-here';
import { runProgram } from './run-program';

const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-own-tariff-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Invented: 13 cents, 47 in the evening, and 5 % tax. */
const rate = `lampkeeperTariff: 1
name: Evening rate
fixed: { perMonth: 9 }
seasons:
  - name: all year
    from: "01-01"
    to: "12-31"
    periods:
      - { name: evening, price: 0.47, hours: [[16, 21]] }
      - { name: rest, price: 0.13 }
taxes: [{ name: city tax, share: 0.05, on: charges }]
export: { rule: none }
`;

beforeEach(() => {
  for (const name of readdirSync(folder)) rmSync(join(folder, name), { recursive: true });
  writeFileSync(join(folder, 'kim.home.yaml'), furnaceOnly('kim'));
  writeFileSync(join(folder, 'rate.yaml'), rate);
});

const read = (...path: string[]) => readFileSync(join(folder, ...path), 'utf8');

const run = (...args: string[]) => runHere(folder, args);

test('the plan counts with the tariff of a file, names it, and the home file gives the same papers again', async () => {
  const first = await run('plan', 'kim.home.yaml', '--tariff', 'rate.yaml', '--out', 'first');
  expect(first.code).toBe(0);
  expect(first.err).toContain('"Evening rate" now stands in kim.home.yaml');
  expect(read('first', 'kim.plan.md')).toContain(
    'your own tariff, "Evening rate": 13.0 to 47.0 cents a kWh',
  );
  rmSync(join(folder, 'rate.yaml'));
  expect(await run('check', 'kim.home.yaml')).toMatchObject({
    code: 0,
    out: expect.stringContaining('the tariff "Evening rate"'),
  });
  expect((await run('plan', 'kim.home.yaml', '--out', 'second')).code).toBe(0);
  const papers = readdirSync(join(folder, 'first')).sort();
  expect(papers).toContain('kim.plan.yaml');
  expect(readdirSync(join(folder, 'second')).sort()).toEqual(papers);
  for (const paper of papers) expect(read('second', paper), paper).toBe(read('first', paper));
  const data = parse(read('second', 'kim.plan.yaml'));
  expect(data.money.tariffInFull.seasons[0].periods[0].price).toBe(0.47);
});

test('a file with a fault is said line by line, and nothing at all is written', async () => {
  const faulty = rate.replace('[[16, 21]]', '[[16, 21]], note: mine').replace('0.13', '13');
  writeFileSync(join(folder, 'rate.yaml'), faulty);
  const home = read('kim.home.yaml');
  const refused = await run('plan', 'kim.home.yaml', '--tariff', 'rate.yaml', '--out', 'papers');
  expect(refused).toMatchObject({ code: 1, out: '' });
  expect(refused.err).toMatch(/^rate\.yaml:9:\d+: seasons 1, periods 1: "note" does not belong/);
  expect(readdirSync(folder).sort()).toEqual(['kim.home.yaml', 'rate.yaml']);
  expect(read('kim.home.yaml')).toBe(home);
  expect(await run('check', 'rate.yaml')).toMatchObject({ code: 1, out: refused.err });
  const begun = await run('new.home.yaml', '--plain', '--tariff', 'rate.yaml');
  expect(begun).toMatchObject({ code: 1, err: refused.err });
  expect(readdirSync(folder)).not.toContain('new.home.yaml');
});

test('the interview takes it too, and keeps it with the first answers; a fault in it has the line of the home file', async () => {
  const begun = runProgram(folder, ['--plain', '--tariff', 'rate.yaml'], '9\nlane-house\n');
  expect(begun.code).toBe(0);
  expect(begun.err).toContain('lane-house.home.yaml');
  expect((await run('check', 'lane-house.home.yaml')).out).toContain('the tariff "Evening rate"');
  writeFileSync(
    join(folder, 'lane-house.home.yaml'),
    read('lane-house.home.yaml').replace('0.47', '47'),
  );
  const line = read('lane-house.home.yaml')
    .split('\n')
    .findIndex((text) => text.includes('price: 47'));
  const checked = await run('check', 'lane-house.home.yaml');
  expect(checked.code).toBe(1);
  expect(checked.out).toMatch(new RegExp(`^lane-house\\.home\\.yaml:${line + 1}:\\d+: .*dollars`));
  expect(await run('plan', 'lane-house.home.yaml')).toMatchObject({
    code: 1,
    out: '',
    err: checked.out,
  });
});

test('calc bill takes the same file: 100 kWh, each line as on paper', async () => {
  const { code, out } = await run(
    'calc',
    'bill',
    '--tariff',
    'rate.yaml',
    'kwh=100',
    'month=4',
    '--json',
  );
  expect(code).toBe(0);
  const { steps, result } = JSON.parse(out);
  const dollars = (label: string) =>
    steps.find((step: { label: string }) => step.label.startsWith(label)).value;
  expect(dollars('Energy, evening') / 0.47 + dollars('Energy, rest') / 0.13).toBeCloseTo(100, 0);
  const untaxed = 9 + dollars('Energy, evening') + dollars('Energy, rest');
  expect(Math.abs(dollars('city tax') - 0.05 * untaxed)).toBeLessThan(0.006); // half a cent
  expect(result[0].value).toBeCloseTo(untaxed + dollars('city tax'), 9);
  expect((await run('calc', 'pump-power', '--tariff', 'rate.yaml')).code).toBe(2);
  expect(await run('calc', 'bill', 'tariff=own', 'kwh=100')).toMatchObject({
    code: 1,
    err: expect.stringContaining('--tariff my-rate.yaml'),
  });
});

test('the form is published', async () => {
  const schema = JSON.parse((await run('schema', 'tariff')).out);
  expect(schema.properties).toHaveProperty('lampkeeperTariff');
  expect(JSON.parse((await run('schema', 'home')).out).properties).toHaveProperty('tariff');
});
