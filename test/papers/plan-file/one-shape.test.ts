import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, expectTypeOf, test } from 'vitest';
import { parse } from 'yaml';
import type { z } from 'zod';
import { planData } from '../../../src/papers/plan-file/plan-data';
import { PLAN_FILE_VERSION } from '../../../src/papers/plan-file/plan-file-version';
import { planSchema } from '../../../src/papers/plan-file/plan-schema';
import { planYaml } from '../../../src/papers/plan-file/to-yaml';
import { signed, writePapers } from '../../../src/store/write-papers';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

const folder = mkdtempSync(join(tmpdir(), 'plan-file-'));
afterAll(() => rmSync(folder, { recursive: true }));
const comment = (text: string) => `# ${text}`;

test('the shape of the plan file is written once: its type is that of the schema', () => {
  expectTypeOf(planData).returns.toEqualTypeOf<z.infer<typeof planSchema>>();
  const data = planData(planOf('tower-six'), english);
  // Strict: neither more nor less than the schema says.
  expect(planSchema.parse(data)).toEqual(data);
});

test('the plan file names its version and the language of its words', () => {
  const data = parse(planYaml(planOf('tower-six'), english));
  expect(data).toMatchObject({ lampkeeperPlan: PLAN_FILE_VERSION, language: 'en' });
});

test.each([1, 2])('a plan file of version %i is still known as ours, and replaced', (version) => {
  const file = `v${version}.plan.yaml`;
  const text = `lampkeeperPlan: ${version}\nschemaVersion: ${version}\n`;
  writeFileSync(join(folder, file), signed({ file, text, comment }));
  expect(writePapers(folder, [{ file, text: 'new\n', comment }], false).ok).toBe(true);
  expect(readFileSync(join(folder, file), 'utf8')).toContain('new');
});
