import { codeOf, type Disk, realDisk, refusal } from './disk';

/** A home file is a page or two; anything much larger is something else. */
export const MOST_BYTES = 1_000_000;

/**
 * The text of a file, at most a million bytes of it. Throws what the system throws, or a refusal: a pipe, a device, a
 * folder, something far too large, or bytes that are no UTF-8 text.
 */
export function readText(path: string, disk: Disk = realDisk): string {
  const bytes = readBytes(path, disk);
  if (isUtf16(bytes)) throw refusal('UTF16');
  const whole =
    bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? bytes.subarray(3) : bytes;
  if (whole.includes(0)) throw refusal('NULBYTE');
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(whole);
  } catch {
    throw refusal('NOUTF8');
  }
}

/** The word that stands for standard input in place of a file. */
export const STANDARD_INPUT = '-';

/** It can be read once only, and more than one reader may want it. */
let fromStandardInput: Uint8Array | null = null;

function readBytes(path: string, disk: Disk): Uint8Array {
  if (path === STANDARD_INPUT) {
    fromStandardInput ??= readAll(0, PIPE_BYTES, disk);
    return fromStandardInput;
  }
  const file = disk.open(path, 'read');
  try {
    const { kind, bytes } = disk.stat(file);
    if (kind === 'folder') throw refusal('EISDIR');
    if (kind !== 'file') throw refusal('NOFILE');
    if (bytes > MOST_BYTES) throw refusal('TOOLARGE');
    return readAll(file, bytes, disk);
  } finally {
    disk.close(file);
  }
}

/** What standard input is likely to hold; it says no size. */
const PIPE_BYTES = 32_000;

/**
 * Everything up to the end. A file may grow while it is read, so room is made for more than it said it has; never more
 * than one byte over the limit is taken.
 */
function readAll(file: number, likelyBytes: number, disk: Disk): Uint8Array {
  let into = new Uint8Array(Math.min(likelyBytes, MOST_BYTES) + 1);
  let length = 0;
  for (;;) {
    const more = readSome(file, into, length, disk);
    length += more;
    if (length > MOST_BYTES) throw refusal('TOOLARGE');
    if (more === 0) return into.subarray(0, length);
    if (length === into.length) into = withRoom(into);
  }
}

/** The same bytes with as much room again, up to one byte over the limit. */
function withRoom(bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  const wider = new Uint8Array(Math.min(2 * bytes.length, MOST_BYTES + 1));
  wider.set(bytes);
  return wider;
}

/** A pipe that has nothing yet says so, and on Windows one that has ended. */
function readSome(file: number, into: Uint8Array, at: number, disk: Disk): number {
  for (;;) {
    try {
      return disk.read(file, into, at);
    } catch (error) {
      if (codeOf(error) === 'EOF') return 0;
      if (codeOf(error) !== 'EAGAIN') throw error;
      disk.wait(10);
    }
  }
}

/** Its mark at the start, or a zero in every second place of the beginning. */
function isUtf16(bytes: Uint8Array): boolean {
  const [one = 1, other = 1] = bytes;
  if ((one === 0xff && other === 0xfe) || (one === 0xfe && other === 0xff)) return true;
  const start = bytes.subarray(0, 64);
  const zeros = (from: number) => start.filter((byte, i) => i % 2 === from && byte === 0).length;
  const half = Math.floor(start.length / 2);
  return half >= 4 && (zeros(0) >= half || zeros(1) >= half);
}
