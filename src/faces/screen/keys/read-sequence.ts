/** How many characters an escape sequence takes, or that its end has not come yet. */
export type Read = { readonly end: number } | 'unfinished';

const ESC = '\x1b';
/** Introducers of a string that runs to BEL or ESC \: DCS, SOS, OSC, PM, APC. */
const STRING_STARTS = 'PX]^_';
/** A control sequence longer than this is noise. */
const LONGEST_SEQUENCE = 64;
const LONGEST_STRING = 4096;

/**
 * Find the end of the escape sequence that starts at `from` (where ESC stands).
 * Forms after ECMA-48, 5th edition, sections 5.4 (control sequences) and 5.6 (control strings),
 * and the single-shift and mouse forms terminals send. A control character in the middle ends it there.
 */
export function readSequence(text: string, from: number): Read {
  const kind = text[from + 1];
  if (kind === undefined) return 'unfinished';
  if (kind === '[') return readControl(text, from + 2, from);
  if (kind === 'O') return readOne(text, from + 2);
  if (STRING_STARTS.includes(kind)) return readString(text, from + 2, from);
  // ESC with a control character is the Esc key and then that key.
  if (kind < ' ' || kind === '\x7f') return { end: from + 1 };
  return { end: from + 1 + String.fromCodePoint(text.codePointAt(from + 1)!).length };
}

function readControl(text: string, first: number, from: number): Read {
  // Function keys of the Linux console: ESC [ [ A.
  if (text[first] === '[') return readOne(text, first + 1);
  for (let at = first; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code < 0x20 || code > 0x7e || at - from > LONGEST_SEQUENCE) return { end: at };
    if (code < 0x40) continue;
    const oldMouse = text[at] === 'M' && at === first;
    if (!oldMouse) return { end: at + 1 };
    // The old mouse report has three bytes after the M.
    return at + 4 <= text.length ? { end: at + 4 } : 'unfinished';
  }
  return 'unfinished';
}

function readOne(text: string, at: number): Read {
  if (text[at] === undefined) return 'unfinished';
  return { end: text[at]! < ' ' ? at : at + 1 };
}

function readString(text: string, first: number, from: number): Read {
  for (let at = first; at < text.length; at++) {
    const char = text[at]!;
    if (char === '\x07') return { end: at + 1 };
    if (char === ESC) {
      if (text[at + 1] === undefined) return 'unfinished';
      return { end: text[at + 1] === '\\' ? at + 2 : at };
    }
    if (char === '\x03' || at - from > LONGEST_STRING) return { end: at };
  }
  return 'unfinished';
}
