import { describe, expect, it } from 'vitest';
import { rules } from '../../src/rules';
import { ruleOf, ruleRows } from '../../src/tables/rules';
import { english } from '../../src/words/en';
import { sayCite } from '../../src/words/en/cites/say-cite';

const who = [
  'household',
  'licensed electrician',
  'gas fitter',
  'utility',
  'building or fire department',
  'clinician or supplier',
  'insurer or landlord',
];

/** "U.S." and decimals do not end a sentence; a stop followed by space or the end does. */
const sentences = (says: string) => says.split(/(?<=[.!?]"?)\s+/);

/** Syllables by groups of vowels, silent e left out: the usual machine count. */
function syllables(word: string): number {
  const groups = word
    .toLowerCase()
    .replace(/[^a-z]/g, '')
    .replace(/e$/, '')
    .match(/[aeiouy]+/g);
  return Math.max(1, groups?.length ?? 0);
}

/** Grade by Kincaid, Fishburne, Rogers and Chissom 1975: 0.39 words/sentence + 11.8 syllables/word - 15.59. */
function schoolGrade(says: string): number {
  const words = says.match(/[A-Za-z][A-Za-z'-]*/g) ?? [];
  const total = words.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * (words.length / sentences(says).length) + 11.8 * (total / words.length) - 15.59;
}

const rows = ruleRows.rows.map((row) => ({ ...row, ...english.rules[row.id] }));

describe('the words of the rules', () => {
  it('has one row for each rule and one rule for each row', () => {
    const ids = rules.map((rule) => rule.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ruleRows.rows.map((row) => row.id).sort()).toEqual([...ids].sort());
  });

  it.each(rows)('says $id in one to five sentences', (row) => {
    const count = sentences(row.says).length;
    expect(count).toBeGreaterThanOrEqual(1);
    expect(count).toBeLessThanOrEqual(5);
  });

  // Reading age 12 is US grade 7; the formula scatters by about two grades on texts this short.
  it.each(rows)('can be read by a child of about twelve: $id', (row) => {
    expect(schoolGrade(row.says)).toBeLessThanOrEqual(9);
  });

  it.each(rows.filter((row) => row.saysIfOpen))(
    'says $id as shortly and plainly where nobody told it',
    (row) => {
      expect(sentences(row.saysIfOpen!).length).toBeLessThanOrEqual(5);
      expect(schoolGrade(row.saysIfOpen!)).toBeLessThanOrEqual(9);
    },
  );

  it('is on average at grade 6 or below', () => {
    const grades = rows.map((row) => schoolGrade(row.says));
    expect(grades.reduce((a, b) => a + b, 0) / grades.length).toBeLessThanOrEqual(6);
  });

  it.each(rows)('names who, how grave and where from: $id', (row) => {
    expect([1, 2, 3, 4, 5]).toContain(row.severity);
    expect(row.who.length).toBeGreaterThan(0);
    for (const one of row.who) expect(who).toContain(one);
    expect(sayCite(row.cite).length).toBeGreaterThan(8);
    expect(row.proof === undefined || row.proof.length > 5).toBe(true);
  });

  it('never claims to know which code holds where the reader lives', () => {
    for (const { says } of rows) expect(says).not.toMatch(/your code (says|requires)/i);
  });

  it('never says that no permit is needed', () => {
    for (const { says } of rows) {
      expect(says).not.toMatch(/(no permit is|not need a permit|without a permit is fine)/i);
    }
  });

  it('refuses an id it does not hold', () => {
    expect(() => ruleOf('no-such-rule' as never)).toThrow(RangeError);
  });
});
