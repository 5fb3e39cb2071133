import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';
import { answersOf, planOf } from '../../households/read-household';

/** Ids with a hyphen that are words of English too. */
const words = new Set(['home-made', 'mini-split']);

const ids = new Set<string>();

beforeAll(async () => {
  const folder = join(import.meta.dirname, '../../../dist/compiled/tables');
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.js'))) {
    const { default: table } = await import(join(folder, file));
    for (const row of table.rows ?? []) {
      if (typeof row !== 'object' || row === null) continue;
      for (const value of Object.values(row)) keep(value);
    }
  }
  for (const question of interview.questions) {
    keep(question.id);
    for (const choice of question.choices ?? []) keep(choice.id);
  }
});

function keep(value: unknown) {
  const isId = typeof value === 'string' && /^[a-z][a-z0-9]*(-[a-z0-9]+)+$/.test(value);
  if (isId && !words.has(value)) ids.add(value);
}

const gas = { 'gas-supply': 'town-gas', 'engine-place': 'open-20ft', 'budget-now': 20000 };

test.each([
  ['birch-street', {}],
  ['tower-six', {}],
  ['ridge-road', {}],
  ['mill-lane', {}],
  ['mill-lane', { ...gas, 'heat-main': 'gas-furnace', 'must-run': ['heat', 'sump', 'fridge'] }],
  ['birch-street', { ...gas, 'own-sources': ['portable-engine'], 'engine-fuel': 'natural-gas' }],
  ['ridge-road', { 'own-sources': ['ev-outlet', 'home-battery', 'solar'] }],
])('no id of the tables or the questions is printed for %s %j', (name, changed) => {
  expect(ids.size).toBeGreaterThan(300);
  const asItIs = Object.keys(changed).length === 0;
  const answers = { ...answersOf(name), ...changed };
  const plan = asItIs ? planOf(name) : frozenPlan(answers, '2026-11-25', 2);
  const page = planMarkdown(plan, english);
  const printed = new Set(page.match(/[a-z][a-z0-9]*(-[a-z0-9]+)+/g));
  expect([...printed].filter((token) => ids.has(token))).toEqual([]);
});
