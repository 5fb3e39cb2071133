import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { rules } from '../../src/rules/index';
import { ruleRows } from '../../src/tables/rules';

// That a rule names only questions, choices and words there are is held by the compiler: `QuestionId`,
// `ChoiceId` and `RuleId` are written by the build from the data.

const root = join(import.meta.dirname, '../../src/rules');
const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter(
  (file) => file.endsWith('.ts') && /\w[/\\]/.test(file) && !file.startsWith('when'),
);
const idIn = (file: string) =>
  /: Rule = \{\s*id: '([^']+)'/.exec(readFileSync(join(root, file), 'utf8'))?.[1];

describe('the rules', () => {
  const ids = rules.map((rule) => rule.id);

  it('are each named in the list of their group: add a missing one to its rules.ts', () => {
    const found = files
      .filter((file) => !file.endsWith('rules.ts'))
      .map((file) => [file, idIn(file)]);
    expect(found.length).toBeGreaterThan(100);
    expect(
      found.filter(([, id]) => id === undefined || !ids.includes(id as never)),
      'Import each in the rules.ts of its group and put it into the list there',
    ).toEqual([]);
  });

  it('have each a name of their own', () => {
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });

  it('take up every row of words: a row without a rule is never said', () => {
    expect(
      ruleRows.rows.map((row) => row.id).filter((id) => !ids.includes(id)),
      'Write src/rules/GROUP/ID.ts for each and name it in the rules.ts there, or take the row away',
    ).toEqual([]);
  });
});
