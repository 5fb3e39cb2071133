import { readNumber } from './read-number';
import { type UnitWord, unitWords } from './unit-words';

/** One number with the unit written after it, if any. */
export interface Term {
  readonly value: number;
  readonly unit: UnitWord | null;
  /** As a person reads it back: "7.2 A". */
  readonly written: string;
  /** A multiplication sign stands before it. */
  readonly times: boolean;
}

export type TermsRead =
  | { readonly terms: readonly Term[] }
  | { readonly problem: 'no-number' | 'several' | 'words'; readonly heard: string };

const SPELLINGS = [...new Set(unitWords.flatMap((word) => word.spellings))].sort(
  (a, b) => b.length - a.length,
);
const filler =
  /^(?:[ ,~+&;]|(?:about|around|approx|approximately|roughly|maybe|and|plus|at)(?![a-z])\.?)+/;
const range = /^ ?(?:[-/]|to(?![a-z])|or(?![a-z])) ?(?=[\d.])/;
const sign = /^ ?[x@] ?(?=[\d.])/;

/** Split tidy text into numbers with units. `wanted` settles spellings that stand for two units. */
export function readTerms(text: string, wanted: UnitWord): TermsRead {
  const terms: Term[] = [];
  let rest = text.replace(filler, '');
  while (rest !== '') {
    if (terms.length > 0 && range.test(rest)) return { problem: 'several', heard: text };
    const times = terms.length > 0 ? (sign.exec(rest)?.[0] ?? '') : '';
    const number = readNumber(rest.slice(times.length));
    if (number === null) {
      return terms.length === 0
        ? { problem: 'no-number', heard: text }
        : { problem: 'words', heard: rest.trim() };
    }
    const { unit, after } = readUnit(number.rest, wanted);
    const written = inWords(number.written, unit);
    terms.push({ value: number.value, unit, written, times: times !== '' });
    rest = sign.test(after) ? after : after.replace(filler, '');
  }
  return terms.length === 0 ? { problem: 'no-number', heard: text } : { terms };
}

function inWords(number: string, unit: UnitWord | null): string {
  if (unit === null) return number;
  return unit.unit.startsWith('$') ? `$${number}${unit.unit.slice(1)}` : `${number} ${unit.unit}`;
}

function readUnit(text: string, wanted: UnitWord): { unit: UnitWord | null; after: string } {
  const bare = text.replace(/^[ -](?=[^\d -])/, '');
  if (sign.test(text)) return { unit: null, after: text };
  const spelling = SPELLINGS.find((s) => bare.startsWith(s) && !/^[a-z]/.test(edge(bare, s)));
  if (spelling !== undefined) {
    const meanings = unitWords.filter((word) => word.spellings.includes(spelling));
    const unit = meanings.find((m) => m.measure === wanted.measure) ?? meanings[0]!;
    return { unit, after: bare.slice(spelling.length) };
  }
  // "2 fridges": what is counted may be named.
  const named = wanted.measure === 'count' ? /^[a-z]+/.exec(bare) : null;
  return { unit: null, after: named === null ? text : bare.slice(named[0].length) };
}

/** What follows a spelling; letters there mean that another word was written. */
function edge(text: string, spelling: string): string {
  return /[a-z]$/.test(spelling) ? text.slice(spelling.length).replace(/^x(?=[ \d])/, ' x') : '';
}
