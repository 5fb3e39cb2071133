/** The same words with a capital at the start. */
export function sentenceCase(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
