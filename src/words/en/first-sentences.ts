import { SENTENCE_END } from './first-sentence';

/** About two lines of 80 columns. */
const LONGEST = 170;

/** The first sentence, and as many whole ones after it as fit into about two lines; a long first one stands whole. */
export function firstSentences(text: string): string {
  const [first, ...more] = text.split(SENTENCE_END) as [string, ...string[]];
  let said = first;
  for (const next of more) {
    if (said.length + 1 + next.length > LONGEST) break;
    said = `${said} ${next}`;
  }
  return said;
}
