/** A number at the head of a text: what it is, how it was written, and what follows it. */
export interface NumberRead {
  readonly value: number;
  readonly written: string;
  readonly rest: string;
}

const NUMBER_WORDS: Readonly<Record<string, number>> = {
  'half a': 0.5,
  'half an': 0.5,
  half: 0.5,
  a: 1,
  an: 1,
  once: 1,
  twice: 2,
  none: 0,
  zero: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  fifteen: 15,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
};

/** Larger denominators are two readings, not a fraction: 115/230 V, 120/240 V. */
const LARGEST_DENOMINATOR = 64;

const GROUPED = String.raw`\d{1,3}(?:,\d{3})+(?![\d,])|\d{1,3}(?: \d{3})+(?!\d)`;
const plain = new RegExp(String.raw`^(-?)((?:(?:${GROUPED}|\d+)(?:\.\d+)?|\.\d+))`);
const fraction = /^(-?)(?:(\d+)[ -])?\s*(\d+) ?\/ ?(\d+)(?![\d/.])/;
const word = new RegExp(
  `^(?:${Object.keys(NUMBER_WORDS)
    .sort((a, b) => b.length - a.length)
    .join('|')})(?![a-z])`,
);

/**
 * Read "1,500", "1 500", "1.5", ".5", "3/4", "1 1/2", "1-1/2", "two" or "1.8k" at the head of
 * lower-case text. Null when there is no number there, or not a finite one.
 */
export function readNumber(text: string): NumberRead | null {
  return finite(readFraction(text)) ?? finite(readPlain(text)) ?? finite(readWord(text));
}

function readFraction(text: string): NumberRead | null {
  const found = fraction.exec(text);
  if (found === null) return null;
  const [written, minus, whole = '0', above, below] = found;
  const denominator = Number(below);
  if (denominator === 0 || denominator > LARGEST_DENOMINATOR) return null;
  const size = Number(whole) + Number(above) / denominator;
  return { value: minus ? -size : size, written, rest: text.slice(written.length) };
}

function readPlain(text: string): NumberRead | null {
  const found = plain.exec(text);
  if (found === null) return null;
  const [written, minus, digits = ''] = found;
  const size = Number(digits.replace(/[, ]/g, ''));
  const rest = text.slice(written.length);
  const more = HALF_MORE.exec(rest)?.[0];
  if (more !== undefined) {
    const value = size + 0.5;
    return {
      value: minus ? -value : value,
      written: `${written}${more}`,
      rest: rest.slice(more.length),
    };
  }
  const thousands = /^ ?k(?![a-z])/.exec(rest);
  const value = thousands ? size * 1000 : size;
  return {
    value: minus ? -value : value,
    written: thousands ? `${written}k` : written,
    rest: thousands ? rest.slice(thousands[0].length) : rest,
  };
}

function readWord(text: string): NumberRead | null {
  const found = word.exec(text);
  if (found === null) return null;
  const size = NUMBER_WORDS[found[0]]!;
  const rest = text.slice(found[0].length);
  const large = LARGE.exec(rest);
  const more = HALF_MORE.exec(rest)?.[0] ?? large?.[0] ?? '';
  const value = large !== null ? size * LARGE_WORDS[large[1]!]! : size + (more === '' ? 0 : 0.5);
  return { value, written: `${found[0]}${more}`, rest: rest.slice(more.length) };
}

/** "two hundred", "a thousand". */
const LARGE_WORDS: Readonly<Record<string, number>> = { hundred: 100, thousand: 1000 };
const LARGE = /^ (hundred|thousand)(?![a-z])/;

/** "one and a half", "2 and a half". */
const HALF_MORE = /^ and a half(?![a-z])/;

function finite(read: NumberRead | null): NumberRead | null {
  return read !== null && Number.isFinite(read.value) ? read : null;
}
