import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { compileWords } from '../../src/build/compile-words';

const root = mkdtempSync(join(tmpdir(), 'words-'));
afterAll(() => rmSync(root, { recursive: true }));

/** The build of a table of two rules, and a language that says this of them. */
function build(rules: string | null) {
  const from = join(root, 'words');
  rmSync(from, { recursive: true, force: true });
  mkdirSync(join(from, 'xx'), { recursive: true });
  writeFileSync(join(root, 'rules.yaml'), 'rows:\n  - id: one\n  - id: two\n');
  if (rules !== null) writeFileSync(join(from, 'xx/rules.yaml'), rules);
  return () => compileWords(from, join(root, 'rules.yaml'), join(root, 'out'));
}
const one = 'one:\n  says: Words about the first.\n';
const two = 'two:\n  says: Words about the second.\n';

test('a language says every rule, and none that is not there', () => {
  expect(build(one + two)).not.toThrow();
  expect(build(null)).toThrow(/xx\/rules.yaml is missing: write what each rule says/);
  expect(build(one)).toThrow(/no words for two/);
  expect(build(`${one}${two}three:\n  says: Words about a third.\n`)).toThrow(
    /three, which is no rule/,
  );
  expect(build(`${one}two:\n  say: Misspelt.\n`)).toThrow(/rules.yaml/);
});
