import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import type { CitePart } from '../src/quantity/cite';
import { citeWords } from '../src/words/en/cites/cite-words';
import { sayNoise } from '../src/words/en/money/say-noise';

/** Words of somebody who explains; who published what, where and in which edition needs none of them. */
const PROSE =
  /\b(?:our|we|us|you|your|is|are|was|were|be|may|must|should|asks?|decides?|differs?|agrees?|confirm|measure|because|so that|no source|from memory|practice|practitioners|judge?ment|common(?:ly)?|usual(?:ly)?|typical|knowledge|experience|rule of thumb|depends|opened|likely|low end|high end)\b/;

/** A reference names whoever published it: a capital word or a quoted title comes first. */
const isReference = (text: string) =>
  /^(?:["A-Z]|\d+ (?:CFR|USC) )/.test(text) && !PROSE.test(text);

const tables = readdirSync('src/tables/data', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.yaml'))
  .map((file) => ({ file, rows: parse(readFileSync(join('src/tables/data', file), 'utf8')).rows }));

/** Parts of every citation of a row, with where they stand. */
const cited = tables.flatMap(({ file, rows }) =>
  ((rows ?? []) as Record<string, unknown>[]).flatMap((row) =>
    [row.cite, row.source]
      .filter((cite) => Array.isArray(cite))
      .flatMap((cite) => (cite as CitePart[]).map((part) => ({ at: `${file} ${row.id}`, part }))),
  ),
);

const code = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts') && !/^words|cite-code/.test(file))
  .map((file) => readFileSync(join('src', file), 'utf8'))
  .join('\n');

test('tables that a household is shown cite in parts: a reference, or a code that words say', () => {
  const files = new Set(cited.map(({ at }) => at.split(' ')[0]));
  expect([...files].sort()).toEqual([
    'household-loads.yaml',
    'measures.yaml',
    'prices/equipment-costs.yaml',
    'rules.yaml',
    'siting-distances.yaml',
  ]);
  for (const { at, part } of cited) {
    const codes = typeof part === 'string' ? [part] : 'ref' in part ? [part.of ?? 'weather'] : [];
    expect(codes.length, at).toBe(1);
    expect(Object.keys(citeWords), at).toContain(codes[0]);
  }
});

test('a reference says what was published and where, and explains nothing: that is a code', () => {
  const refs = [
    ...cited.flatMap(({ part }) => (typeof part === 'object' && 'ref' in part ? [part.ref] : [])),
    ...[...code.matchAll(/(?:\bref: |\breference\()\s*['`]((?:[^'`\\]|\\.)*)['`]/g)].map(
      ([, ref]) => ref!,
    ),
  ];
  expect(refs.length).toBeGreaterThan(200);
  expect(refs.filter((ref) => !isReference(ref))).toEqual([]);
});

test('prose is told from a reference', () => {
  expect(isReference('NEC 2023 702.5')).toBe(true);
  expect(isReference('Kailes, Emergency Power Planning, 2019')).toBe(true);
  expect(isReference('common practice, no source')).toBe(false);
  expect(isReference('IRC R324.6, from memory')).toBe(false);
  expect(isReference('NEC 690.7; the label decides')).toBe(false);
  expect(isReference("CPSC advice; the maker's label is what counts")).toBe(false);
});

test('every code of a citation is used somewhere', () => {
  const inTables = new Set(
    cited.flatMap(({ part }) => (typeof part === 'string' ? [part] : 'ref' in part ? part.of : [])),
  );
  const unused = Object.keys(citeWords).filter(
    (id) => !inTables.has(id as keyof typeof citeWords) && !code.includes(`'${id}'`),
  );
  expect(unused).toEqual([]);
});

test('how loud each thing to buy is can be said', () => {
  const { rows } = tables.find(({ file }) => file === 'prices/equipment-costs.yaml')!;
  for (const row of rows) expect(sayNoise(row.noise), row.class).not.toMatch(/undefined|^$/);
});
