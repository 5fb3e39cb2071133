import { copyFileSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { changedSince } from '../../src/commands/changed-since';
import { planYaml } from '../../src/papers/plan-file/to-yaml';
import { english } from '../../src/words/en';
import { frozenPlan } from '../frozen-plans';
import { answersOf } from '../households/read-household';

const place = mkdtempSync(join(tmpdir(), 'lampkeeper-since-'));
const answers = answersOf('mill-lane');
const older = frozenPlan(answers, '2026-11-25', 5);
const longer = frozenPlan({ ...answers, 'budget-now': 0, 'budget-later': 0 }, '2026-11-25', 5);

test('nothing is said where no older plan stands', async () => {
  expect(await changedSince(place, 'nobody', older, english)).toEqual([]);
});

test('over the same plan it says that nothing of the advice changed', async () => {
  writeFileSync(join(place, 'oak.plan.yaml'), planYaml(older, english));
  const [line, ...more] = await changedSince(place, 'oak', older, english);
  expect(line).toContain('Since the plan of 2026-11-25');
  expect(line).toContain('nothing of what is advised changed');
  expect(more).toEqual([]);
});

test('over another it says before and now, and the cautions that come and go', async () => {
  writeFileSync(join(place, 'elm.plan.yaml'), planYaml(older, english));
  const text = (await changedSince(place, 'elm', longer, english)).join('\n');
  expect(text).toMatch(/^ +Before +Now$/m);
  expect(text).toContain('Portable generator with cords');
  expect(text).toContain('Nothing to buy.');
  expect(text).toContain('Cautions that go:');
  for (const line of text.split('\n').slice(1)) expect(line.length, line).toBeLessThanOrEqual(80);
});

test('a plan that is damaged is said to be, and stops nothing', async () => {
  writeFileSync(join(place, 'ash.plan.yaml'), 'lampkeeperPlan: 4\nroutes: [\n');
  expect((await changedSince(place, 'ash', older, english))[0]).toContain('is no whole plan');
  // Only its beginning, as it was written in form 1.
  const begun = join(import.meta.dirname, '../store/earlier/form-1.plan.yaml');
  copyFileSync(begun, join(place, 'fir.plan.yaml'));
  expect((await changedSince(place, 'fir', older, english))[0]).toContain('is no whole plan');
});
