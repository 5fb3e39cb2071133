import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import interview from '#compiled/questions.js';
import { checkPlan } from '../../src/commands/check-plan';
import { PLAN_FILE_VERSION } from '../../src/papers/plan-file/plan-file-version';
import { makePlan } from '../../src/plan/make-plan';
import { parseHome, readHome } from '../../src/store/read-home';
import { readYamlFile } from '../../src/store/read-yaml-file';

/** Files as earlier programs wrote them, kept as they were: never mend one to get this green. */
const folder = 'test/store/earlier';
const files = readdirSync(folder);
const homes = files.filter((file) => file.endsWith('.home.yaml'));
const plans = files.filter((file) => file.endsWith('.plan.yaml'));

test.each(homes)('the home %s opens, and can be planned', (file) => {
  const read = readHome(`${folder}/${file}`, interview);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  expect(Object.keys(read.answers).length).toBeGreaterThan(50);
  expect(makePlan(interview, read.answers, '2026-11-25', 1).routes.length).toBeGreaterThan(3);
});

test('a question that is no longer asked is remarked upon, and no fault', () => {
  const read = parseHome('lampkeeperHome: 1\nanswers:\n  engine-shutoff: "yes"\n', interview);
  expect(read.ok && read.remarks?.map((one) => one.says)).toEqual([
    '"engine-shutoff" is no longer asked. It stays in the file and changes no plan.',
  ]);
});

test('there is a plan of each earlier form, which is told and not refused', () => {
  const forms = plans.map((file) => {
    const read = readYamlFile(`${folder}/${file}`);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    const { lampkeeperPlan: form } = read.data as { lampkeeperPlan: number };
    const said = checkPlan(file, read.data as object, read.placeOf);
    expect(said).toMatchObject({ ok: true, says: expect.stringContaining(`form ${form}`) });
    return form;
  });
  expect(forms.sort()).toEqual(Array.from({ length: PLAN_FILE_VERSION - 1 }, (_, i) => i + 1));
});

test('a plan of a form to come is refused with its line, and one with a fault names it', () => {
  const placeOf = () => ({ line: 1, column: 1 });
  const later = checkPlan('x', parse('lampkeeperPlan: 99'), placeOf);
  expect(later).toMatchObject({ ok: false, says: expect.stringMatching(/^x:1:1: .*form 99/) });
  const half = checkPlan('x', { lampkeeperPlan: PLAN_FILE_VERSION }, placeOf);
  expect(half).toMatchObject({ ok: false, says: expect.stringContaining('make the plan again') });
});

test('a plan is not taken for a home', () => {
  const read = readHome(`${folder}/${plans[0]}`, interview);
  expect(read.ok || read.faults.map((one) => one.says)).toEqual([
    'this is a plan, not a home. Use the home file it was made from.',
  ]);
});
