import { EventEmitter } from 'node:events';

/**
 * What Ink is given to write to: the real terminal's size and writes, but never its `resize`,
 * which Ink answers by wrong erasing; we clear and draw anew ourselves.
 */
export function surfaceFor(stdout: NodeJS.WriteStream): NodeJS.WriteStream {
  const surface = Object.assign(new EventEmitter(), {
    isTTY: true,
    writable: true,
    write: (text: string) => stdout.write(text),
  });
  Object.defineProperties(surface, {
    columns: { get: () => stdout.columns ?? 80 },
    rows: { get: () => stdout.rows ?? 24 },
  });
  return surface as unknown as NodeJS.WriteStream;
}

/** A keyboard that never sends a key. Ours goes to the reducer. */
export function silentKeyboard(): NodeJS.ReadStream {
  const silent = Object.assign(new EventEmitter(), {
    isTTY: true,
    setRawMode: () => silent,
    setEncoding: () => silent,
    ref: () => silent,
    unref: () => silent,
    resume: () => silent,
    pause: () => silent,
    read: () => null,
  });
  return silent as unknown as NodeJS.ReadStream;
}
