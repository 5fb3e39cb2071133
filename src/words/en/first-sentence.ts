/** Where a sentence ends and the next begins. */
export const SENTENCE_END = /(?<=[.!?]) /;

/** The first sentence of a text, to print where the rest stands elsewhere. Never to decide anything by. */
export function firstSentence(text: string): string {
  return text.split(SENTENCE_END)[0]!;
}
