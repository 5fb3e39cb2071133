import { expect, test } from 'vitest';
import { readingGrade, syllables } from './reading-grade';

// Syllables as hyphenated in a general English dictionary.
const hyphenated = [
  'bat-ter-y',
  'gen-er-a-tor',
  'pow-er',
  'be-ing',
  'u-su-al',
  'ra-di-a-tor',
  'de-vic-es',
  'switch-es',
  'ma-chines',
  'used',
  'heat-ed',
  'peo-ple',
  'while',
  'lit-tle',
  'sta-tion',
  'e-lec-tri-cian',
  'ox-y-gen',
  'pipes',
  'med-i-cine',
  'ther-mo-stat',
];

test('syllables are counted as a dictionary parts them', () => {
  for (const parts of hyphenated) {
    expect(syllables(parts.replaceAll('-', '')), parts).toBe(parts.split('-').length);
  }
});

test('the grade follows the published formula', () => {
  // 6 words, 1 sentence, 6 syllables.
  expect(readingGrade('The cat sat on the mat.')).toBeCloseTo(0.39 * 6 + 11.8 - 15.59, 9);
  // 6 words in 2 sentences; 3 + 1 + 2 and 1 + 1 + 3 syllables.
  expect(readingGrade('Battery runs heated. Pipes sat. Battery')).toBeCloseTo(
    0.39 * (6 / 3) + 11.8 * (11 / 6) - 15.59,
    9,
  );
});
