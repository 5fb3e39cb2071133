import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { parse } from 'yaml';
import { blocksToMarkdown } from '../../../src/papers/document/to-markdown';
import { blankQuote } from '../../../src/papers/quote/blank-quote';
import { plansBeside } from '../../../src/papers/quote/plans-beside';
import { quoteBeside } from '../../../src/papers/quote/quote-beside';
import { changesBetween } from '../../../src/plan/changes/changes-between';
import { factsOfPlan } from '../../../src/plan/changes/facts-of';
import { layBeside } from '../../../src/plan/quote/lay-beside';
import type { Quote } from '../../../src/plan/quote/quote';
import { readQuote } from '../../../src/store/read-quote';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-quote-'));
afterAll(() => rmSync(folder, { recursive: true }));
const path = join(folder, 'a.quote.yaml');
const readText = (text: string) => {
  writeFileSync(path, text);
  return readQuote(path);
};
const FIRST = 'lampkeeperQuote: 1';
const plan = planOf('birch-street');

test('a blank quote is read as one that says nothing, and a filled line as what it says', () => {
  const blank = blankQuote(plan, FIRST, english);
  const read = readText(blank);
  expect(read.ok && Object.values(read.quote).every((value) => value === null)).toBe(true);
  const filled = blank
    .replaceAll(/^#(\w+: )#.*$/gm, '$1')
    .replace('priceUsd: ', 'priceUsd: 2100')
    .replace('leavesOut: ', 'leavesOut: [lights-led]');
  const told = readText(filled);
  expect(told.ok && told.quote).toMatchObject({ priceUsd: 2100, leavesOut: ['lights-led'] });
  for (const { id } of plan.home.loads.filter(({ id }) => plan.advice.route.carries.includes(id)))
    expect(blank).toContain(`#   ${id}: `);
  expect(parse(blank)).toEqual({ lampkeeperQuote: 1 });
});

test.each([
  ['priceUsd: much', 'priceUsd: must be a number without a unit'],
  ['transfer: switch', 'write one of none, interlock, transfer-switch, automatic'],
  ['permit: true', '"permit" does not belong here. The lines are: priceUsd'],
  ['weeks: -1', 'weeks: must be at least 0'],
  ['permitIncluded: maybe', 'permitIncluded: must be true or false'],
])('%s is refused with its place', (line, says) => {
  const read = readText(`${FIRST}\n${line}\n`);
  expect(read.ok).toBe(false);
  if (!read.ok) expect(read.says).toContain(says);
  if (!read.ok) expect(read.says).toMatch(/quote\.yaml:[12]:\d+: /);
});

test('a file without its first line is no quote', () => {
  const read = readText('priceUsd: 100\n');
  expect(!read.ok && read.says).toContain('a quote file starts with "lampkeeperQuote: 1"');
});

test('each line says the plan, the quote and what to ask; what is lacking comes first, whole', () => {
  const quote: Quote = {
    priceUsd: 9_999,
    usableKwh: null,
    continuousWatts: 1_000,
    startingVa: null,
    transfer: 'interlock',
    leavesOut: ['sump'],
    permitIncluded: false,
    licenseNamed: true,
    warrantyYears: 2,
    weeks: 3,
  };
  const said = blocksToMarkdown(quoteBeside(plan, quote, layBeside(plan, quote), english));
  const flat = said.replaceAll(/\s+/g, ' ');
  expect(flat).toContain('Price. The plan: $1,770');
  expect(flat).toContain('The quote: $9,999. It is above the range of the plan. Ask: What makes');
  expect(flat).toContain('The quote: 1,000 W. It is not enough. Ask:');
  expect(flat).toContain('Starts. The plan:');
  expect(flat).toContain('The quote: does not say. Ask: How many starting VA');
  expect(flat).toContain('leaves out what must keep running: sump pump.');
  expect(flat).toContain(english.rules['panel-work-licensed'].says.replaceAll(/\s+/g, ' '));
  expect(flat.indexOf('Before you sign')).toBeLessThan(flat.indexOf('Line by line'));
  for (const line of said.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
});

test('two plans stand beside each other line by line, and what both say stands once', () => {
  const said = blocksToMarkdown(plansBeside(plan, planOf('mill-lane'), english));
  expect(said).toContain('- mill-lane: Portable generator with cords');
  // Price, hours, odds and what is left out are said as everywhere two plans are compared.
  const { rows } = english.changes(
    changesBetween(factsOfPlan(plan), factsOfPlan(planOf('mill-lane'))),
  );
  expect(rows.length).toBeGreaterThan(4);
  for (const { name, before } of rows) {
    expect(said).toContain(name);
    expect(said.replaceAll(/\s+/g, ' ')).toContain(before);
  }
  const same = blocksToMarkdown(plansBeside(plan, plan, english));
  expect(same).not.toContain('- birch-street:');
  expect(same.match(/- Both: /g)).toHaveLength(
    2 + changesBetween(factsOfPlan(plan), factsOfPlan(plan)).aspects.length,
  );
});
