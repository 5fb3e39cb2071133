import type { Cite, CitePart } from '../../../quantity/cite';
import { sentenceCase } from '../sentence-case';
import { citeWords } from './cite-words';

/** A citation in one line, in small letters but for names. */
export function sayCite(cite: Cite): string {
  return cite.map(sayPart).join('; ');
}

function sayPart(part: CitePart): string {
  if (typeof part === 'string') return citeWords[part];
  if ('answer' in part) return `answer "${part.answer}"`;
  if ('averagePriceIn' in part)
    return `average price of a kWh in ${part.averagePriceIn} (from memory, not re-read)`;
  if ('ref' in part) return part.of === undefined ? part.ref : `${citeWords[part.of]}: ${part.ref}`;
  switch (part.standing) {
    case 'practice':
      return `common practice, no source (${part.table})`;
    case 'memory':
      return `${part.table} (from memory, not re-read)`;
    case 'judgement':
      return `our judgement (${part.table})`;
  }
}

/** Many citations as a list: each once, from A to Z, with a capital. */
export function sayCites(cites: readonly Cite[]): string[] {
  const said = new Set(cites.map((cite) => sentenceCase(sayCite(cite))));
  return [...said].sort((a, b) => a.localeCompare(b, 'en'));
}
