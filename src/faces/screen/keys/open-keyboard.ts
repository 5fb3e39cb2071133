import { StringDecoder } from 'node:string_decoder';
import type { Key } from '../../../interview/keys/key';
import { cutKeys, NOTHING_PENDING, settleKeys } from './cut-keys';

export interface Keyboard {
  /** Leave the keys to somebody else for a while: what is typed then is not ours. */
  rest(): void;
  wake(): void;
  /** Give the keyboard back as it was found. May be called twice. */
  close(): void;
}

export interface KeyboardParts {
  readonly stdin: NodeJS.ReadStream;
  /** Called once a chunk, with every key in it. */
  readonly onKeys: (keys: readonly Key[]) => void;
  /** Called when the terminal has been closed. */
  readonly onGone?: () => void;
  /** How long a lone ESC waits for the rest of a sequence, ms. */
  readonly escapeDelayMs?: number;
}

/**
 * The only reader of the keyboard: raw mode, chunks cut into keys, handed on at once.
 * The end of the stream means that the terminal is gone; it counts as Ctrl+C where nobody asked to be told.
 */
export function openKeyboard({
  stdin,
  onKeys,
  onGone = () => onKeys([{ name: 'ctrl-c' }]),
  escapeDelayMs = 30,
}: KeyboardParts): Keyboard {
  const decoder = new StringDecoder('utf8');
  let pending = NOTHING_PENDING;
  let timer: NodeJS.Timeout | undefined;
  let settle: NodeJS.Immediate | undefined;

  const wait = () => {
    clearTimeout(timer);
    clearImmediate(settle);
    if (pending.begun === '' && !pending.afterReturn) return;
    // After the delay one more look at the stream: we may have been the slow one.
    timer = setTimeout(() => {
      settle = setImmediate(() => {
        const cut = settleKeys(pending);
        pending = cut.pending;
        if (cut.keys.length > 0) onKeys(cut.keys);
      });
    }, escapeDelayMs);
  };
  const onData = (chunk: Buffer | string) => {
    const text = typeof chunk === 'string' ? chunk : decoder.write(chunk);
    const cut = cutKeys(pending, text);
    pending = cut.pending;
    wait();
    if (cut.keys.length > 0) onKeys(cut.keys);
  };
  const onEnd = () => onGone();

  const wake = () => {
    stdin.setRawMode?.(true);
    stdin.on('data', onData).on('end', onEnd).on('error', onEnd);
    stdin.resume();
  };
  const rest = () => {
    clearTimeout(timer);
    clearImmediate(settle);
    pending = NOTHING_PENDING;
    stdin.off('data', onData).off('end', onEnd).off('error', onEnd);
    try {
      stdin.setRawMode?.(false);
    } catch {
      // A terminal that is gone has no modes.
    }
    stdin.pause();
  };
  wake();
  return { rest, wake, close: rest };
}
