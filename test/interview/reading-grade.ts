/** Syllables of an English word by its spelling: vowel groups, less a silent e, plus vowels that part. */
export function syllables(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-z]/g, '');
  if (letters.length <= 3) return 1;
  const heard = letters
    .replace(/([^aeiouycgsxzh])es$/, '$1s')
    .replace(/([^aeiouytd])ed$/, '$1d')
    .replace(/([^aeiouyl]|[aeiouy]l)e$/, '$1');
  const groups = heard.match(/[aeiouy]+/g)?.length ?? 0;
  const parted = heard.match(/(?<![tcsg])i[aou]|(?<![qg])ua|eing/g)?.length ?? 0;
  return Math.max(1, groups + parted);
}

/**
 * US school grade needed to read a text: 0.39 words/sentences + 11.8 syllables/words - 15.59.
 * Source: Kincaid, Fishburne, Rogers and Chissom, "Derivation of new readability formulas for
 * Navy enlisted personnel", Naval Technical Training Command, 1975.
 */
export function readingGrade(text: string): number {
  const sentences = text.split(/[.?!](?:\s|$)/).filter((s) => /\w/.test(s)).length;
  const words = text.split(/\s+/).filter((w) => /\w/.test(w));
  const heard = words.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * (words.length / sentences) + 11.8 * (heard / words.length) - 15.59;
}
