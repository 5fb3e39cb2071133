import type { Key } from '../../../interview/keys/key';
import { graphemes } from '../../../interview/keys/text-field';
import { CONTROL_KEYS, SEQUENCE_KEYS } from './control-keys';
import { readSequence } from './read-sequence';

/** What is left over between two chunks. */
export interface Pending {
  /** The beginning of an escape sequence. */
  readonly begun: string;
  /** A paste whose end has not come, else null. */
  readonly paste: string | null;
  /** The last character was a carriage return: a line feed right after it belongs to it. */
  readonly afterReturn: boolean;
}

export interface Cut {
  readonly keys: readonly Key[];
  readonly pending: Pending;
}

export const NOTHING_PENDING: Pending = { begun: '', paste: null, afterReturn: false };

const ESC = '\x1b';
const PASTE_START = '[200~';
const PASTE_END = `${ESC}[201~`;
const LONGEST_PASTE = 20_000;
/** Nobody types that many letters between two looks at the keyboard: a terminal that marks no pastes. */
const LONGEST_TYPED = 256;

/**
 * Cut a chunk of terminal input into keys. Pure: what a chunk leaves unfinished is handed to the next.
 * Sequences we do not know, focus and mouse reports are dropped; Ctrl+C is heard anywhere.
 */
export function cutKeys(pending: Pending, chunk: string): Cut {
  const cutter = new Cutter(pending, chunk);
  return cutter.run();
}

/** Settle what is pending after a silence: a lone ESC was the Esc key, other beginnings are dropped. */
export function settleKeys(pending: Pending): Cut {
  const keys: Key[] = pending.begun === ESC ? [{ name: 'escape' }] : [];
  return { keys, pending: { begun: '', paste: pending.paste, afterReturn: false } };
}

class Cutter {
  private readonly keys: Key[] = [];
  private readonly text: string;
  private at = 0;
  private begun = '';
  private paste: string | null;
  private afterReturn: boolean;

  constructor(pending: Pending, chunk: string) {
    this.text = pending.begun + chunk;
    this.paste = pending.paste;
    this.afterReturn = pending.afterReturn;
  }

  run(): Cut {
    while (this.at < this.text.length && this.begun === '') {
      if (this.paste !== null) this.readPaste();
      else if (this.text[this.at] === ESC) this.readEscape();
      else this.readPlain();
    }
    const { begun, paste, afterReturn } = this;
    return { keys: this.keys, pending: { begun, paste, afterReturn } };
  }

  private readPaste(): void {
    const rest = this.text.slice(this.at);
    const end = rest.indexOf(PASTE_END);
    const stop = rest.indexOf('\x03');
    if (stop >= 0 && (end < 0 || stop < end)) {
      this.paste = null;
      this.at += stop;
      return;
    }
    if (end >= 0) {
      this.endPaste(rest.slice(0, end));
      this.at += end + PASTE_END.length;
      return;
    }
    // The end mark itself may be split between two chunks.
    const tail = rest.lastIndexOf(ESC);
    const split = tail >= 0 && PASTE_END.startsWith(rest.slice(tail)) ? tail : rest.length;
    this.paste = (this.paste! + rest.slice(0, split)).slice(0, LONGEST_PASTE);
    this.begun = rest.slice(split);
    this.at = this.text.length;
  }

  private endPaste(rest: string): void {
    const text = (this.paste! + rest).slice(0, LONGEST_PASTE).replace(/[\r\n]+$/, '');
    this.paste = null;
    if (text !== '') this.keys.push({ name: 'text', text, pasted: true });
  }

  private readEscape(): void {
    this.afterReturn = false;
    const read = readSequence(this.text, this.at);
    if (read === 'unfinished') {
      this.begun = this.text.slice(this.at);
      return;
    }
    const sequence = this.text.slice(this.at + 1, read.end);
    this.at = read.end;
    if (sequence === PASTE_START) this.paste = '';
    else if (sequence === '') this.keys.push({ name: 'escape' });
    else this.pushNamed(SEQUENCE_KEYS[sequence]);
  }

  private readPlain(): void {
    const char = this.text[this.at]!;
    if (isControl(char)) {
      this.at += 1;
      const follows = char === '\n' && this.afterReturn;
      this.afterReturn = char === '\r';
      if (!follows) this.pushNamed(CONTROL_KEYS[char]);
      return;
    }
    this.afterReturn = false;
    const from = this.at;
    while (this.at < this.text.length && !isControl(this.text[this.at]!)) this.at += 1;
    const run = this.text.slice(from, this.at).replaceAll('\ufffd', '');
    if (run.length > LONGEST_TYPED) this.keys.push({ name: 'text', text: run, pasted: true });
    else for (const text of graphemes(run)) this.keys.push({ name: 'text', text });
  }

  private pushNamed(name: (typeof CONTROL_KEYS)[string] | undefined): void {
    if (name !== undefined) this.keys.push({ name });
  }
}

/** C0, DEL and C1 controls. */
function isControl(char: string): boolean {
  return char < ' ' || (char >= '\x7f' && char <= '\x9f');
}
