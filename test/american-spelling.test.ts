import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

/** British forms, each written in two halves so that this file is no hit of its own. */
const british = [
  ['neigh', 'bour'],
  ['cen', 'tre'],
  ['col', 'our'],
  ['lic', 'ence'],
  ['level', 'ised'],
].map((halves) => halves.join(''));

/** The words of units that people may type either way. */
const spellings = join('src', 'quantity', 'unit-words.ts');

function files(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return entry.name === 'compiled' ? [] : files(path);
    return /\.(ts|tsx|mjs|yaml|md)$/.test(entry.name) && path !== spellings ? [path] : [];
  });
}

test('names of files, words and code are spelled the American way', () => {
  const all = [...files('src'), ...files('questions'), ...files('test'), 'README.md'];
  const hits = all.filter((path) => {
    const text = `${path}\n${readFileSync(path, 'utf8')}`.toLowerCase();
    return british.some((word) => text.includes(word));
  });
  expect(hits).toEqual([]);
});
