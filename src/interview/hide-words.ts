import { asPattern } from '../quantity/as-pattern';
import type { Interview } from './questions/question';

/** What a shared screen does to a text. */
export type Hide = (text: string) => string;

/** Amounts of money: "$1,200", "1,200 dollars". */
const MONEY = '\\$\\s?\\d[\\d,.]*\\d|\\$\\s?\\d|\\b\\d[\\d,.]*(?=\\s+dollars?\\b)';

/**
 * A text without names, words of health and amounts of money. `names` are those of homes; a word of health is hidden
 * with whatever ends it. `dots` stand for it, however long it is.
 */
export function hider(
  { medicalWords }: Pick<Interview, 'medicalWords'>,
  names: readonly string[],
  dots = '•••',
): Hide {
  const named = names.filter((name) => name.trim() !== '').map(asPattern);
  const medical = medicalWords.map((word) => `${asPattern(word).replaceAll(' ', '\\s+')}[\\p{L}]*`);
  const words = `(?<![\\p{L}\\p{N}])(?:${[...named.map((one) => `${one}(?![\\p{L}\\p{N}])`), ...medical].join('|')})`;
  const pattern = new RegExp(`${words}|${MONEY}`, 'giu');
  return (text) => text.replace(pattern, (found) => (found.startsWith('$') ? `$${dots}` : dots));
}
