import { parseQuantity } from './parse-quantity';

export interface WantedList {
  /** Unit the numbers are kept in, one of those in `unit-words`. */
  readonly unit: string;
  readonly count: number;
}

export type ParsedList =
  | { readonly ok: true; readonly values: readonly number[] }
  | { readonly ok: false; readonly problem: 'empty' }
  /** `heard` could not be read as one number. */
  | { readonly ok: false; readonly problem: 'no-number'; readonly heard: string }
  | { readonly ok: false; readonly problem: 'count'; readonly found: number };

/**
 * Read several numbers typed in one line, in the wanted unit: "910 850 700", "910, 850, 700", "1,050; 980 kWh".
 * A comma inside a number of thousands is kept where spaces or semicolons part the numbers ("1,050 980"), else each
 * comma parts two numbers ("910,850,700").
 */
export function parseList(text: string, { unit, count }: WantedList): ParsedList {
  const bare = text.replaceAll(new RegExp(`(?<=[\\d\\s])${unit}(?![a-z])`, 'gi'), ' ');
  const spaced = pieces(bare, /(?:[\s;]|,(?=\s|$))+/);
  const commas = pieces(bare, /[\s;,]+/);
  if (commas.length === 0) return { ok: false, problem: 'empty' };
  const parts = spaced.length === count || commas.length !== count ? spaced : commas;
  const values: number[] = [];
  for (const part of spaced.length === 1 ? commas : parts) {
    const read = parseQuantity(part, { unit });
    if (!read.ok) return { ok: false, problem: 'no-number', heard: part };
    values.push(read.value);
  }
  return values.length === count
    ? { ok: true, values }
    : { ok: false, problem: 'count', found: values.length };
}

function pieces(text: string, between: RegExp): string[] {
  return text.split(between).filter((piece) => piece !== '');
}
